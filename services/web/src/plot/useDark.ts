import { useSyncExternalStore } from 'react';

const dark = window.matchMedia('(prefers-color-scheme: dark)');

/** Whether the page is dark; what is drawn on a canvas is drawn anew when that changes. */
export function useDark(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      dark.addEventListener('change', onChange);
      return () => dark.removeEventListener('change', onChange);
    },
    () => dark.matches,
  );
}
