import type { SearchView, SystemView } from '@tiegel/contract';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { Notation } from '../../words/Notation.tsx';
import { Prose } from '../../words/Prose.tsx';
import { candidateAddress } from '../candidateAddress.ts';
import { phasesInWords } from './phasesInWords.ts';

export interface SystemTableProps {
  search: SearchView;
  /** what is told of each best candidate */
  columns: readonly ShownQuantity[];
  items: readonly SystemView[];
  /** nothing of them is published, so that no column says so */
  unexplored: boolean;
}

/** Systems in the order of their best candidates, with what the search asks for of each best. */
export function SystemTable({ search, columns, items, unexplored }: SystemTableProps) {
  const { specification, prices } = search;
  return (
    <div className="scroll-x">
      <table className="plain-table systems">
        <caption className="unseen">Systems by their best candidate</caption>
        <thead>
          <tr>
            <th scope="col" className="number">
              Place
            </th>
            <th scope="col">System</th>
            <th scope="col">
              Best candidate<span className="head-unit">at.%</span>
            </th>
            {columns.map(({ id, name, symbol, unit }) => (
              <th key={id} scope="col" className="number">
                {name} <Notation text={symbol} />
                <span className="head-unit">{unitText(unit, prices?.currency)}</span>
              </th>
            ))}
            <th scope="col" className="number">
              Rank
            </th>
            <th scope="col" className="number">
              Kept
            </th>
            {unexplored ? null : <th scope="col">Published</th>}
          </tr>
        </thead>
        <tbody>
          {items.map(({ system, kept, best, published, own, melts }, place) => (
            <tr key={system}>
              <td className="number">{formatCount(place + 1)}</td>
              <th scope="row">{system}</th>
              <td>
                <span className="composition-cell">
                  <ShareBar composition={best.composition} />
                  <Link href={candidateAddress(search.id, best.composition)}>
                    <Shares
                      composition={best.composition}
                      decimals={shareDecimals(specification.fractions)}
                    />
                  </Link>
                </span>
              </td>
              {columns.map(({ id, decimals }) => (
                <td key={id} className="number">
                  {formatNumber(best.quantities[id], decimals)}
                </td>
              ))}
              <td className="number">{formatCount(best.rank)}</td>
              <td className="number">{formatCount(kept)}</td>
              {unexplored ? null : (
                <td>
                  <Prose text={phasesInWords(published, { own, melts })} />
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
