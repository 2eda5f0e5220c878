import type { SearchDistributions, SearchView } from '@tiegel/contract';
import { nameInSentence } from '@tiegel/contract/terms';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { axisTitle } from '../../plot/axisTitle.ts';
import { Figure } from '../../plot/Figure.tsx';
import { Histogram, type HistogramMark, type HistogramRow } from '../../plot/Histogram.tsx';
import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { fileNameOf, originOf } from '../lookView.ts';

type Of = SearchDistributions['quantities'][number];

interface DistributionFigureProps {
  search: SearchView;
  quantity: ShownQuantity;
  spread: Of;
  answer: SearchDistributions;
  /** edges of limits that the figure beside it with the most of them names: all are as high as that one */
  markLines: number;
}

/** One quantity over grid, passing and kept compositions, with the edges of its limits. */
export function DistributionFigure(props: DistributionFigureProps) {
  const { search, quantity, spread, answer, markLines } = props;
  const { prices, specification } = search;
  const rows = rowsOf(spread, answer);
  const unit = unitText(quantity.unit, prices?.currency);
  const marks = specification.limits
    .filter((limit) => limit.quantity === quantity.id)
    .flatMap(({ min, max }) => [
      ...(min === undefined ? [] : [markAt(min, 'above', unit)]),
      ...(max === undefined ? [] : [markAt(max, 'below', unit)]),
    ]);
  return (
    <Figure
      title={quantity.name}
      caption={outsideInWords(spread, answer)}
      origin={['Each row is as high as its own fullest bar.', originOf(search)]}
      fileName={fileNameOf(search, `${quantity.id}-distribution`)}
      table={<BinTable quantity={quantity} unit={unit} edges={spread.edges} rows={rows} />}
    >
      <Histogram
        label={`Distribution of ${nameInSentence(quantity.id, quantity.name)}`}
        edges={spread.edges}
        rows={rows}
        marks={marks}
        markLines={markLines}
        title={axisTitle(quantity, prices?.currency)}
        unit={unit}
        rowHeight={46}
      />
    </Figure>
  );
}

function rowsOf({ grid, passing, kept }: Of, { exact, meeting }: SearchDistributions): HistogramRow[] {
  const total = (of: Of['kept']) => sum(of.counts) + of.below + of.above;
  const sampled = exact ? '' : ' (sample)';
  return [
    ...(grid
      ? [
          {
            name: `All compositions${sampled}`,
            counts: grid.counts,
            total: total(grid),
            sampled: !exact,
            tone: 'whole' as const,
          },
        ]
      : []),
    ...(passing
      ? [
          {
            name: `Passing${sampled}`,
            counts: passing.counts,
            total: total(passing),
            sampled: !exact,
            tone: 'part' as const,
          },
        ]
      : []),
    { name: 'Kept', counts: kept.counts, total: meeting, sampled: false, tone: 'chosen' },
  ];
}

function markAt(value: number, keeps: 'above' | 'below', unit: string): HistogramMark {
  const text = formatNumber(value, String(value).split('.')[1]?.length ?? 0);
  const words = `${keeps === 'above' ? 'at least' : 'at most'} ${text}`;
  return { value, keeps, label: unit === '' ? words : `${words} ${unit}` };
}

/** What the bins leave out. */
function outsideInWords({ grid, kept }: Of, { exact }: SearchDistributions): string[] {
  const compositions = exact ? 'compositions' : 'compositions of the sample';
  const parts = [
    ...(grid && grid.below + grid.above > 0
      ? [`${formatCount(grid.below + grid.above)} ${compositions} lie outside the axis`]
      : []),
    ...(grid && grid.missing > 0 ? [`${formatCount(grid.missing)} ${compositions} have no value`] : []),
    ...(kept.below + kept.above > 0
      ? [`${formatCount(kept.below + kept.above)} kept ones lie outside the axis`]
      : []),
  ];
  return parts.length > 0 ? [`${parts.join('; ')}.`] : [];
}

function BinTable({
  quantity,
  unit,
  edges,
  rows,
}: {
  quantity: ShownQuantity;
  unit: string;
  edges: readonly number[];
  rows: readonly HistogramRow[];
}) {
  const decimals = Math.max(quantity.decimals, 2);
  return (
    <table className="plain-table">
      <caption className="unseen">{quantity.name}</caption>
      <thead>
        <tr>
          <th scope="col" className="number">
            From<span className="head-unit">{unit}</span>
          </th>
          <th scope="col" className="number">
            to<span className="head-unit">{unit}</span>
          </th>
          {rows.map(({ name }) => (
            <th key={name} scope="col" className="number">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {edges.slice(0, -1).map((edge, bin) =>
          rows.every(({ counts }) => counts[bin] === 0) ? null : (
            <tr key={edge}>
              <td className="number">{formatNumber(edge, decimals)}</td>
              <td className="number">{formatNumber(edges[bin + 1], decimals)}</td>
              {rows.map(({ name, counts }) => (
                <td key={name} className="number">
                  {formatCount(counts[bin]!)}
                </td>
              ))}
            </tr>
          ),
        )}
      </tbody>
    </table>
  );
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
