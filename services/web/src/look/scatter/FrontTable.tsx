import type { SearchView, TradeOff } from '@tiegel/contract';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import type { ChosenPlot } from './usualPlot.ts';

/** The corners of a Pareto front, from the best of one quantity to the best of the other. */
export function FrontTable({
  search,
  chosen: { x, y },
  front,
}: {
  search: SearchView;
  chosen: ChosenPlot;
  front: TradeOff;
}) {
  const head = ({ name, unit }: typeof x) => (
    <th scope="col" className="number">
      {name}
      <span className="head-unit">{unitText(unit, search.prices?.currency)}</span>
    </th>
  );
  return (
    <table className="plain-table">
      <caption className="unseen">Pareto front</caption>
      <thead>
        <tr>
          <th scope="col" className="number">
            Rank
          </th>
          {head(x)}
          {head(y)}
          <th scope="col" className="number">
            Candidates with these values
          </th>
        </tr>
      </thead>
      <tbody>
        {front.items.map(({ values, rank, alike }) => (
          <tr key={rank}>
            <td className="number">{formatCount(rank)}</td>
            <td className="number">{formatNumber(values[0], x.decimals)}</td>
            <td className="number">{formatNumber(values[1], y.decimals)}</td>
            <td className="number">{formatCount(alike)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
