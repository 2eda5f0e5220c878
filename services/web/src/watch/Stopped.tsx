import type { SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { formatCount, formatPercent } from '../numbers/formatNumber.ts';
import { StateMark } from './StateMark.tsx';

/** What became of a search that was cancelled or that failed. */
export function Stopped({ search }: { search: SearchView }) {
  const { id, state, reason, progress } = search;
  return (
    <div className={state === 'failed' ? 'note note-danger' : 'note'}>
      <p>
        <StateMark state={state} /> after {formatPercent(progress.points, progress.total)} of{' '}
        {formatCount(progress.total)} compositions. {reason}
      </p>
      <p>
        A search that was not finished has no candidates, since the best might be among the rest.{' '}
        <Link href={`/ask?from=${encodeURIComponent(id)}`}>Ask it again</Link>
      </p>
    </div>
  );
}
