import type { SearchView } from '@tiegel/contract';
import { Link } from 'wouter';
import { formatCount } from '../numbers/formatNumber.ts';

/** Why a finished search has no candidate to show, and what can be done. */
export function NothingFound({ search }: { search: SearchView }) {
  const { id, counts } = search;
  const { keep, keepPerSystem } = search.specification;
  if (counts.passed === null ? keep + keepPerSystem === 0 : counts.passed > 0) {
    const passed = counts.passed === null ? '' : `${formatCount(counts.passed)} compositions passed, but `;
    return (
      <p className="note">
        {passed === '' ? 'The' : `${passed}the`} search was asked to keep none.{' '}
        <Link href={`/ask?from=${encodeURIComponent(id)}`}>Ask again and keep some</Link>.
      </p>
    );
  }
  return (
    <p className="note note-warning">
      Begin with the limit that leaves least by itself, or widen the shares:{' '}
      <Link href={`/ask?from=${encodeURIComponent(id)}`}>Change the limits and ask again</Link>
    </p>
  );
}
