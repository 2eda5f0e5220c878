import { use, useSyncExternalStore } from 'react';
import { OnPaper } from './onPaper.ts';

const dark = window.matchMedia('(prefers-color-scheme: dark)');

/** Whether what is drawn is dark; what is drawn on a canvas is drawn anew when that changes. */
export function useDark(): boolean {
  const onPaper = use(OnPaper);
  const screen = useSyncExternalStore(
    (onChange) => {
      dark.addEventListener('change', onChange);
      return () => dark.removeEventListener('change', onChange);
    },
    () => dark.matches,
  );
  return screen && !onPaper;
}
