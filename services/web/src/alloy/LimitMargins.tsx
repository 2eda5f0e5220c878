import { type Candidate, limitInWords, type SearchView } from '@tiegel/contract';
import { formatNumber } from '../numbers/formatNumber.ts';
import { lookupIn } from '../server/lookup.ts';
import type { QuantityView } from '../server/types.ts';
import { asSentence } from '../words/asSentence.ts';
import { marginOf } from './marginOf.ts';

interface LimitMarginsProps {
  search: SearchView;
  candidate: Candidate;
  quantities: readonly QuantityView[];
}

/** Each limit of the search, the candidate's value, and how much room is left to the nearer bound. */
export function LimitMargins({ search, candidate, quantities }: LimitMarginsProps) {
  const { limits } = search.specification;
  const lookup = lookupIn(quantities, search.prices?.currency);
  if (limits.length === 0) return null;
  return (
    <section aria-labelledby="margins-head">
      <h2 id="margins-head">Limits</h2>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col" className="number">
              Value
            </th>
            <th scope="col" className="number">
              Room to the bound
            </th>
          </tr>
        </thead>
        <tbody>
          {limits.map((limit) => {
            const words = asSentence(limitInWords(limit, lookup));
            const value = candidate.quantities[limit.quantity];
            const decimals = quantities.find(({ id }) => id === limit.quantity)?.decimals ?? 3;
            const { met, margin } = marginOf(limit, value);
            return (
              <tr key={words}>
                <th scope="row" className="plain">
                  {words}
                </th>
                <td className="number">
                  <span className={met ? 'met' : 'unmet'}>
                    {met ? '✓' : '×'}
                    <span className="unseen">{met ? ' met ' : ' not met '}</span>
                  </span>{' '}
                  {formatNumber(value, decimals)}
                </td>
                <td className="number">
                  {margin === 0
                    ? 'on the limit'
                    : `${formatNumber(margin, decimals)} ${lookup(limit.quantity).unit}`}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
