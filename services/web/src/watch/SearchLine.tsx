import type { SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { formatEstimate, formatSeconds } from '../numbers/formatDuration.ts';
import { formatInstant } from '../numbers/formatInstant.ts';
import { formatCount, formatPercent } from '../numbers/formatNumber.ts';
import { asSentence } from '../words/asSentence.ts';
import { StateMark } from './StateMark.tsx';

/** One search in the list: name, question, how it stands, when. */
export function SearchLine({ search }: { search: SearchView }) {
  const { id, name, question, state, createdAt } = search;
  return (
    <li className="search-line">
      <Link href={`/searches/${id}`} className="search-line-name">
        {name === '' ? 'Without a name' : name}
      </Link>
      <p className="search-line-question">{asSentence(question)}</p>
      <p className="search-line-state">
        <StateMark state={state} /> <span className="quiet">{standing(search)}</span>
      </p>
      <time className="quiet search-line-time" dateTime={createdAt}>
        {formatInstant(createdAt)}
      </time>
    </li>
  );
}

function standing({ state, reason, progress, counts, kept, seconds, secondsLeft }: SearchView): string {
  if (state === 'done') {
    const passed =
      counts.passed === null
        ? `${formatCount(counts.points)} compositions searched`
        : `${formatCount(counts.passed)} of ${formatCount(counts.points)} passed`;
    const found = `${passed}, ${formatCount(kept)} kept`;
    return seconds === null ? found : `${found}, in ${formatSeconds(seconds)}`;
  }
  const percent = `${formatPercent(progress.points, progress.total)} of ${formatCount(progress.total)}`;
  const left = secondsLeft === null ? '' : `, ${formatEstimate(secondsLeft)} left`;
  return `${percent} tested${left}${reason ? `: ${reason}` : ''}`;
}
