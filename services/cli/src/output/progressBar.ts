import type { SearchView } from '@tiegel/contract';
import { SingleBar } from 'cli-progress';
import { durationInWords } from './inWords.ts';

/** How far a search is, on standard error. */
export interface ProgressBar {
  /** Shows it as it is now, and says why it waits. */
  show(view: SearchView): void;
  stop(): void;
}

export function progressBar(): ProgressBar {
  const bar = new SingleBar({
    stream: process.stderr,
    format: '{bar} {percentage} %  {value} of {total} points{left}',
    barsize: 24,
    hideCursor: true,
    clearOnComplete: true,
  });
  let reason: string | null = null;
  let shown = false;
  return {
    show(view) {
      if (view.reason !== reason && view.reason !== null) console.error(view.reason);
      reason = view.reason;
      const { points, total } = view.progress;
      if (!shown && view.state === 'running') {
        bar.start(total, points, { left: '' });
        shown = true;
      }
      bar.update(points, { left: leftInWords(view) });
    },
    stop: () => bar.stop(),
  };
}

function leftInWords({ secondsLeft }: SearchView): string {
  return secondsLeft === null ? '' : `, about ${durationInWords(secondsLeft)} left`;
}
