import { useQuery } from '@tanstack/react-query';
import type { Candidate, SearchView } from '@tiegel/contract';
import { sensitivities } from '@tiegel/screening';
import { useMemo } from 'react';
import { Failed } from '../frame/Failed.tsx';
import { formatNumber, noValue } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';
import { pairsQuery } from '../server/queries.ts';
import type { ElementView, QuantityView } from '../server/types.ts';
import { Notation } from '../words/Notation.tsx';
import { factsOf } from './factsOf.ts';

interface SensitivitiesProps {
  search: SearchView;
  candidate: Candidate;
  quantities: readonly QuantityView[];
  elements: readonly ElementView[];
}

/** What one at.% more of each element, at the expense of the others in proportion, does to every quantity. */
export function Sensitivities({ search, candidate, quantities, elements }: SensitivitiesProps) {
  const { data: pairs, error, refetch } = useQuery(pairsQuery);
  const symbols = Object.keys(candidate.composition).sort();
  const rates = useMemo(() => {
    if (!pairs) return null;
    const facts = factsOf(Object.keys(candidate.composition), elements, pairs);
    return new Map(quantities.map(({ id }) => [id, sensitivities(id, candidate.composition, facts)]));
  }, [pairs, candidate, elements, quantities]);

  return (
    <section aria-labelledby="sensitivities-head">
      <h2 id="sensitivities-head">One at.% more</h2>
      <p className="quiet read-small">
        By how much a quantity changes when one at.% of an element is added at the expense of the others, in
        proportion. It is the slope at this composition, computed with the data and prices in force now.
      </p>
      {error ? <Failed error={error} what="The change by element" onRetry={() => void refetch()} /> : null}
      {rates ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keys
        <section className="scroll-x" aria-labelledby="sensitivities-head" tabIndex={0}>
          <table className="plain-table">
            <thead>
              <tr>
                <th scope="col">Quantity</th>
                {symbols.map((symbol) => (
                  <th key={symbol} scope="col" className="number">
                    +1 at.% {symbol}
                  </th>
                ))}
                <th scope="col">Unit</th>
              </tr>
            </thead>
            <tbody>
              {quantities.map(({ id, name, symbol: sign, unit, decimals }) => (
                <tr key={id}>
                  <th scope="row" className="plain">
                    {name} <Notation text={sign} />
                  </th>
                  {symbols.map((symbol) => (
                    <td key={symbol} className="number">
                      {change(rates.get(id)?.[symbol], decimals)}
                    </td>
                  ))}
                  <td className="quiet">{unitText(unit, search.prices?.currency)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ) : null}
    </section>
  );
}

/** A slope per mole fraction as the change by one at.%, with its sign and one decimal more than the value has. */
function change(rate: number | null | undefined, decimals: number): string {
  if (rate === null || rate === undefined) return noValue;
  const text = formatNumber(rate / 100, decimals + 1);
  return rate > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}
