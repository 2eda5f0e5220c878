import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { shareDecimals } from '../../composition/shareDecimals.ts';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { Notation } from '../../words/Notation.tsx';
import { Prose } from '../../words/Prose.tsx';
import { candidateAddress } from '../candidateAddress.ts';
import { phasesInWords } from './phasesInWords.ts';
import type { SystemTableProps } from './SystemTable.tsx';

/** Systems on a small screen, a card for the best candidate of each. */
export function SystemCards({ search, columns, items, unexplored }: SystemTableProps) {
  const { specification, prices } = search;
  return (
    <ol className="system-cards">
      {items.map(({ system, kept, best, published, own, melts }, place) => (
        <li key={system} className="candidate-card">
          <p className="row">
            <span className="quiet">{formatCount(place + 1)}</span>
            <Link href={candidateAddress(search.id, best.composition)}>
              <Shares composition={best.composition} decimals={shareDecimals(specification.fractions)} />
            </Link>
          </p>
          <ShareBar composition={best.composition} />
          <dl>
            {columns.map(({ id, name, symbol, unit, decimals }) => (
              <div key={id}>
                <dt title={name}>
                  <Notation text={symbol} />
                </dt>
                <dd>
                  {formatNumber(best.quantities[id], decimals)}{' '}
                  <span className="quiet">{unitText(unit, prices?.currency)}</span>
                </dd>
              </div>
            ))}
          </dl>
          <p className="small quiet">
            Rank {formatCount(best.rank)}; {formatCount(kept)} kept of this system
            {unexplored ? '' : <Prose text={`; published: ${phasesInWords(published, { own, melts })}`} />}
          </p>
        </li>
      ))}
    </ol>
  );
}
