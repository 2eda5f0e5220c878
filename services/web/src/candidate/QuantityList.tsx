import type { Candidate, SearchView } from '@tiegel/contract';
import { formatNumber } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';
import type { QuantityView } from '../server/types.ts';
import { Notation } from '../words/Notation.tsx';
import { sourceInWords } from './sourceInWords.ts';

interface QuantityListProps {
  search: SearchView;
  candidate: Candidate;
  quantities: readonly QuantityView[];
}

/** Every quantity: value and unit, what it tells, what to beware of, its formula and source. */
export function QuantityList({ search, candidate, quantities }: QuantityListProps) {
  return (
    <section aria-labelledby="quantities-head">
      <h2 id="quantities-head">Quantities</h2>
      <ul className="quantities">
        {quantities.map((quantity) => (
          <li key={quantity.id} className="quantity">
            <h3 className="quantity-name">
              <span className="quantity-symbol">
                <Notation text={quantity.symbol} />
              </span>{' '}
              {quantity.name}
            </h3>
            <p className="quantity-value">
              {formatNumber(candidate.quantities[quantity.id], quantity.decimals)}{' '}
              <span className="quantity-unit">{unitText(quantity.unit, search.prices?.currency)}</span>
            </p>
            <div className="quantity-words">
              {candidate.quantities[quantity.id] === null ? (
                <p>No value: a datum of one of the elements is missing, or the formula has none here.</p>
              ) : null}
              <p>{quantity.meaning}</p>
              {quantity.caution ? (
                <p className="quiet">
                  <b className="caution-word">Caution</b> {quantity.caution}
                </p>
              ) : null}
              <details>
                <summary>Formula and source</summary>
                <p className="formula">
                  <Notation text={quantity.notation} />
                </p>
                <p className="quiet">{sourceInWords(quantity.source)}</p>
              </details>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
