import { scheduleInWords } from '@tiegel/contract/terms';
import { useState } from 'react';
import { ScheduleFields } from '../../schedule/ScheduleFields.tsx';
import { type ScheduleDraft, scheduleOf } from '../../schedule/scheduleDraft.ts';
import { beginInWords } from '../../schedule/scheduleInWords.ts';

interface WhenFieldsProps {
  draft: ScheduleDraft;
  onChange: (draft: ScheduleDraft) => void;
  /** something is wrong with it */
  wrong: boolean;
}

/** When the search will be worked on, chosen before it starts; its result does not depend on it. */
export function WhenFields({ draft, onChange, wrong }: WhenFieldsProps) {
  const schedule = scheduleOf(draft);
  const [open, setOpen] = useState(wrong);
  const begin = wrong ? null : beginInWords(schedule, new Date());
  return (
    <details className="small" open={open || wrong} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Worked on {scheduleInWords(schedule)}</summary>
      <div className="schedule">
        <ScheduleFields draft={draft} onChange={onChange} />
        <p className="quiet">{begin ?? 'The result does not depend on it.'}</p>
      </div>
    </details>
  );
}
