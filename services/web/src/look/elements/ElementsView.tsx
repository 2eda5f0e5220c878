import { useQuery } from '@tanstack/react-query';
import type { ElementUse, SearchView } from '@tiegel/contract';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { Failed } from '../../frame/Failed.tsx';
import { useLast } from '../../frame/useLast.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount, formatNumber, formatPercent } from '../../numbers/formatNumber.ts';
import { Figure } from '../../plot/Figure.tsx';
import { NothingMeets } from '../filters/NothingMeets.tsx';
import { elementUseQuery } from '../lookQueries.ts';
import { fileNameOf, type LookProps, originOf } from '../lookView.ts';
import { amountBins } from './amountBins.ts';
import { ElementBars } from './ElementBars.tsx';

/** How often each element of the pool is in the candidates, and how much of it. */
export function ElementsView({ search, view, change }: LookProps) {
  const {
    data: latest,
    error,
    refetch,
    isPlaceholderData,
  } = useQuery(elementUseQuery(search.id, view.filters));
  const last = useLast(latest);
  const data = last.value;
  const stale = last.stale || isPlaceholderData;
  if (error && !data) return <Failed error={error} what="The elements" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Counting elements" />;
  if (data.meeting === 0) return <NothingMeets view={view} change={change} />;
  return (
    <div className={stale ? 'look-stale' : undefined} aria-busy={stale}>
      {error ? (
        <p className="note" role="status">
          This was counted before; it could not be counted anew: {error.message}
        </p>
      ) : null}
      <Figure
        title="Elements in the candidates"
        caption={[
          `In how many of ${formatCount(data.meeting)} candidates each element is, and how many have which amount of it.`,
        ]}
        origin={[originOf(search)]}
        fileName={fileNameOf(search, 'elements')}
        table={<AmountTable use={data} search={search} />}
      >
        <ElementBars use={data} bins={amountBins(data, search.specification.fractions)} />
      </Figure>
    </div>
  );
}

function AmountTable({ use, search }: { use: ElementUse; search: SearchView }) {
  const decimals = shareDecimals(search.specification.fractions);
  return (
    <table className="plain-table">
      <caption className="unseen">Elements in the candidates</caption>
      <thead>
        <tr>
          <th scope="col">Element</th>
          <th scope="col" className="number">
            In candidates
          </th>
          <th scope="col" className="number">
            Share
          </th>
          <th scope="col" className="number">
            Least<span className="head-unit">at.%</span>
          </th>
          <th scope="col" className="number">
            Most<span className="head-unit">at.%</span>
          </th>
          <th scope="col" className="number">
            Most often<span className="head-unit">at.%</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {use.elements.map(({ symbol, candidates, amounts }) => {
          const often = amounts.toSorted((a, b) => b.candidates - a.candidates)[0];
          return (
            <tr key={symbol}>
              <th scope="row">{symbol}</th>
              <td className="number">{formatCount(candidates)}</td>
              <td className="number">{formatPercent(candidates, use.meeting)}</td>
              <td className="number">{formatNumber(amounts[0]?.atomicPercent, decimals)}</td>
              <td className="number">{formatNumber(amounts.at(-1)?.atomicPercent, decimals)}</td>
              <td className="number">{formatNumber(often?.atomicPercent, decimals)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
