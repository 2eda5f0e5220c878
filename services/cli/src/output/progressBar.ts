import type { SearchView } from '@tiegel/contract';
import type { SingleBar } from 'cli-progress';
import { durationInWords } from './inWords.ts';

/** How far a search is, on standard error. */
export interface ProgressBar {
  /** Shows it as it is now, and says why it waits. */
  show(view: SearchView): void;
  stop(): void;
}

/** Drawn where that is a terminal; elsewhere it only says why a search waits. */
export async function progressBar(): Promise<ProgressBar> {
  const bar = process.stderr.isTTY ? await drawnBar() : null;
  let reason: string | null = null;
  let shown = false;
  return {
    show(view) {
      if (view.reason !== reason && view.reason !== null) console.error(view.reason);
      reason = view.reason;
      const { points, total } = view.progress;
      if (!shown && view.state === 'running') {
        bar?.start(total, points, { left: '' });
        shown = true;
      }
      bar?.update(points, { left: leftInWords(view) });
    },
    stop: () => bar?.stop(),
  };
}

async function drawnBar(): Promise<SingleBar> {
  const { SingleBar } = await import('cli-progress');
  return new SingleBar({
    stream: process.stderr,
    format: '{bar} {percentage} %  {value} of {total} points{left}',
    barsize: 24,
    hideCursor: true,
    clearOnComplete: true,
  });
}

function leftInWords({ secondsLeft }: SearchView): string {
  return secondsLeft === null ? '' : `, about ${durationInWords(secondsLeft)} left`;
}
