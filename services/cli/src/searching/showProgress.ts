import type { SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { SingleBar } from 'cli-progress';
import { durationInWords } from '../output/inWords.ts';

/** Shows on standard error how far a search is, and says why it waits; returns how to stop. */
export function showProgress(searches: Searches, id: string): () => void {
  const bar = new SingleBar({
    stream: process.stderr,
    format: '{bar} {percentage} %  {value} of {total} points{left}',
    barsize: 24,
    hideCursor: true,
    clearOnComplete: true,
  });
  let reason: string | null = null;
  let shown = false;
  const stop = searches.watch(id, (view) => {
    if (view.reason !== reason && view.reason !== null) console.error(view.reason);
    reason = view.reason;
    const { points, total } = view.progress;
    if (!shown && view.state === 'running') {
      bar.start(total, points, { left: '' });
      shown = true;
    }
    bar.update(points, { left: leftInWords(view) });
  });
  return () => {
    stop();
    bar.stop();
  };
}

function leftInWords({ secondsLeft }: SearchView): string {
  return secondsLeft === null ? '' : `, about ${durationInWords(secondsLeft)} left`;
}
