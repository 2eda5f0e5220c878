import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Schedule, SearchView } from '@tiegel/contract';
import { scheduleInWords } from '@tiegel/contract/terms';
import { useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { useKept } from '../frame/useKept.ts';
import { ScheduleFields } from '../schedule/ScheduleFields.tsx';
import { type ScheduleDraft, scheduleDraftOf, scheduleFault, scheduleOf } from '../schedule/scheduleDraft.ts';
import { searchKey } from '../server/queries.ts';
import { request } from '../server/request.ts';

/** When a search is worked on: between which times of day, and before or behind others. */
export function SchedulePanel({ search }: { search: SearchView }) {
  const { id, schedule } = search;
  const client = useQueryClient();
  const [typed, setTyped] = useKept<ScheduleDraft | null>(`schedule.${id}`, null);
  const [open, setOpen] = useState(typed !== null);
  const draft = typed ?? scheduleDraftOf(schedule);
  const { mutate, error, isPending } = useMutation({
    mutationFn: (asked: Schedule) =>
      request<SearchView>(`/searches/${id}/schedule`, { method: 'PUT', body: JSON.stringify(asked) }),
    onSuccess: (view) => {
      client.setQueryData(searchKey(id), view);
      setTyped(null);
      setOpen(false);
    },
  });
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Worked on {scheduleInWords(schedule)}</summary>
      <form
        className="schedule"
        onSubmit={(event) => {
          event.preventDefault();
          if (scheduleFault(draft) === null) mutate(scheduleOf(draft));
        }}
      >
        <ScheduleFields draft={draft} onChange={setTyped} />
        <p className="row">
          <button type="submit" disabled={isPending}>
            Keep these hours
          </button>
          {schedule.hours === null ? null : (
            <button type="button" disabled={isPending} onClick={() => mutate({ ...schedule, hours: null })}>
              Start now, at any time
            </button>
          )}
        </p>
        <FaultList error={error} what="The hours are as before." />
      </form>
    </details>
  );
}
