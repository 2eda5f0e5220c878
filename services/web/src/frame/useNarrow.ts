import { useSyncExternalStore } from 'react';

const narrow = window.matchMedia('(width < 46rem)');

/** Whether the screen is too narrow for a table; follows it. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      narrow.addEventListener('change', onChange);
      return () => narrow.removeEventListener('change', onChange);
    },
    () => narrow.matches,
  );
}
