import type { Candidate, SearchView } from '@tiegel/contract';
import { askedFirst } from '../look/columns.ts';
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

/** Every quantity, a line each; a line opens to what to beware of, formula and source. What the search asks for comes first. */
export function QuantityList({ search, candidate, quantities }: QuantityListProps) {
  const { asked, others } = askedFirst(search.specification, quantities);
  const groups = [
    { head: 'Asked for', members: asked },
    { head: 'Everything else', members: others },
  ];
  return (
    <section aria-labelledby="quantities-head">
      <h2 id="quantities-head">Quantities</h2>
      {groups.map(({ head, members }) => (
        <div key={head}>
          <h3 className="quiet small">{head}</h3>
          <ul className="quantities">
            {members.map((quantity) => (
              <li key={quantity.id}>
                <QuantityLine
                  quantity={quantity}
                  value={candidate.quantities[quantity.id] ?? null}
                  currency={search.prices?.currency}
                />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

interface QuantityLineProps {
  quantity: QuantityView;
  value: number | null;
  currency: string | undefined;
}

function QuantityLine({ quantity, value, currency }: QuantityLineProps) {
  const { name, symbol, unit, decimals, meaning, caution, notation, source } = quantity;
  return (
    <details className="quantity">
      <summary>
        <span className="quantity-symbol">
          <Notation text={symbol} />
        </span>
        <span className="quantity-name">{name}</span>
        <span className="quantity-value">
          {formatNumber(value, decimals)} <span className="quantity-unit">{unitText(unit, currency)}</span>
        </span>
        <span className="quantity-meaning">
          {value === null
            ? 'No value: a datum of an element is missing, or the formula has none for this composition.'
            : meaning}
        </span>
      </summary>
      <div className="quantity-words">
        <p className="formula">
          <Notation text={notation} />
        </p>
        {value === null ? <p>{meaning}</p> : null}
        {caution ? (
          <p>
            <b className="caution-word">Caution</b> {caution}
          </p>
        ) : null}
        <p className="quiet">{sourceInWords(source)}</p>
      </div>
    </details>
  );
}
