import { usualSchedule } from '@tiegel/contract/terms';
import { useEffect, useRef } from 'react';
import { FaultList } from '../../frame/FaultList.tsx';
import { useKept } from '../../frame/useKept.ts';
import { scheduleDraftOf, scheduleFault, scheduleOf } from '../../schedule/scheduleDraft.ts';
import { startInWords } from '../../schedule/scheduleInWords.ts';
import { useStart } from './useStart.ts';
import { WhenFields } from './WhenFields.tsx';

interface StartButtonProps {
  specification: unknown;
  /** there is something to search */
  ready: boolean;
  /** what happens instead where something is wrong; null where all is well */
  onRefused: (() => void) | null;
}

/** Starts the search, at once or in its hours, and goes to its page; Ctrl+Enter does the same from anywhere in the form. */
export function StartButton({ specification, ready, onRefused }: StartButtonProps) {
  const [when, setWhen] = useKept('ask.schedule', scheduleDraftOf(usualSchedule));
  const schedule = scheduleOf(when);
  const whenFault = scheduleFault(when);
  const starting = useStart(specification, schedule);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) button.current?.click();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
  const onStart = () => {
    if (onRefused) onRefused();
    else if (ready && whenFault === null && !starting.isPending) starting.mutate();
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className="button-main"
        aria-disabled={!ready || whenFault !== null || starting.isPending}
        onClick={onStart}
      >
        {starting.isPending ? 'Starting …' : startInWords(schedule)}
      </button>
      <WhenFields draft={when} onChange={setWhen} wrong={whenFault !== null} />
      <FaultList
        error={starting.error}
        what="No search was started; what you entered is kept."
        unsure="Whether the search was started is not known; what you entered is kept. Start it again when the server answers: it is started once."
      />
    </>
  );
}
