import { useQuery } from '@tanstack/react-query';
import type { SearchDistributions } from '@tiegel/contract';
import { Failed } from '../../frame/Failed.tsx';
import { useLast } from '../../frame/useLast.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount, formatNumber, formatPercent } from '../../numbers/formatNumber.ts';
import { askedFirst } from '../columns.ts';
import { NothingMeets } from '../filters/NothingMeets.tsx';
import { distributionsQuery } from '../lookQueries.ts';
import type { LookProps } from '../lookView.ts';
import { DistributionFigure } from './DistributionFigure.tsx';

/** So many at once; the others are chosen. */
const mostAsked = 8;

/** Where the kept candidates lie in the whole: each ranked and limited quantity over the grid, what passed, what was kept. */
export function DistributionsView(props: LookProps) {
  const { search, quantities, view, change } = props;
  const { asked, others } = askedFirst(search.specification, quantities);
  const more = quantities.some(({ id }) => id === view.beside) ? view.beside : null;
  const shown = asked.slice(0, mostAsked);
  const query = useQuery(
    distributionsQuery(
      search.id,
      view.filters,
      shown.map(({ id }) => id),
    ),
  );
  const extra = useQuery({
    ...distributionsQuery(search.id, view.filters, more === null ? [] : [more]),
    enabled: more !== null,
  });
  const { error, refetch } = query;
  const last = useLast(query.data);
  const data = last.value;
  const stale = last.stale || query.isPlaceholderData;
  if (error && !data) return <Failed error={error} what="The distributions" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Drawing points of the grid" />;
  const edges = search.specification.limits.map(
    ({ min, max }) => Number(min !== undefined) + Number(max !== undefined),
  );
  const markLines = Math.max(0, ...edges);
  const figures = (answer: SearchDistributions) =>
    answer.quantities.flatMap((one) => {
      const quantity = quantities.find(({ id }) => id === one.quantity);
      return quantity ? (
        <DistributionFigure
          key={one.quantity}
          search={search}
          quantity={quantity}
          spread={one}
          answer={answer}
          markLines={markLines}
        />
      ) : (
        []
      );
    });
  return (
    <div className={stale ? 'look-stale column' : 'column'} aria-busy={stale}>
      {error ? (
        <p className="note" role="status">
          These are the distributions of before; they could not be fetched anew: {error.message}
        </p>
      ) : null}
      <p className="read">
        {sampleInWords(data)} Each row of a figure is as high as its own fullest bar; the share of a bar is
        read out where the pointer or an arrow key is.
      </p>
      {data.meeting === 0 ? <NothingMeets view={view} change={change} /> : null}
      <div className="distributions">{figures(data)}</div>
      <p className="row">
        <label className="row">
          Another quantity
          <select value={more ?? ''} onChange={(event) => change({ beside: event.target.value || null })}>
            <option value="">none</option>
            {[...asked.slice(mostAsked), ...others].map(({ id, name, symbol }) => (
              <option key={id} value={id}>
                {name} {symbol.replace('_', '')}
              </option>
            ))}
          </select>
        </label>
      </p>
      {extra.error ? (
        <Failed error={extra.error} what="That distribution" onRetry={() => void extra.refetch()} />
      ) : null}
      {more !== null && extra.data && !extra.isPlaceholderData ? (
        <div className="distributions">{figures(extra.data)}</div>
      ) : null}
    </div>
  );
}

/** How far the figures are to be trusted: sample and its error. */
function sampleInWords({ sample, exact, passed, error, meeting }: SearchDistributions): string {
  const kept = `${formatCount(meeting)} kept candidates`;
  if (exact)
    return `All ${formatCount(sample)} compositions of the grid, of which ${formatPercent(passed, 1)} pass, and ${kept}.`;
  const share = `${formatNumber(100 * passed, 1)} ± ${formatNumber(100 * error, 1)} %`;
  return `A sample of ${formatCount(sample)} compositions of the grid, each equally likely, of which ${share} pass (95 % interval), and ${kept}.`;
}
