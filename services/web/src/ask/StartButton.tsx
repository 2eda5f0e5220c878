import { useEffect, useRef } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { useStart } from './useStart.ts';

interface StartButtonProps {
  specification: unknown;
  /** there is something to search */
  ready: boolean;
  /** what happens instead where something is wrong; null where all is well */
  onRefused: (() => void) | null;
}

/** Starts the search and goes to its page; Ctrl+Enter does the same from anywhere in the form. */
export function StartButton({ specification, ready, onRefused }: StartButtonProps) {
  const starting = useStart(specification);
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
    else if (ready && !starting.isPending) starting.mutate();
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className="button-main"
        aria-disabled={!ready || starting.isPending}
        onClick={onStart}
      >
        {starting.isPending ? 'Starting …' : 'Start search'}
      </button>
      <FaultList error={starting.error} what="No search was started; what you entered is kept." />
    </>
  );
}
