import type { WeighingError } from '@tiegel/contract';
import { formatNumber } from '../numbers/formatNumber.ts';
import { lookupIn } from '../server/lookup.ts';
import { limitAsSentence } from '../words/limitAsSentence.ts';
import type { AlloyState } from './alloyState.ts';
import { MetMark } from './MetMark.tsx';
import { marginOf } from './marginOf.ts';

interface LimitMarginsProps {
  alloy: AlloyState;
  /** what weighing can turn, where it was asked */
  weighing: WeighingError | null;
}

/** Each limit of the search, the alloy's value, and how much room is left to the nearer bound. */
export function LimitMargins({ alloy, weighing }: LimitMarginsProps) {
  const { limits, values, quantities, search, prices } = alloy;
  const lookup = lookupIn(quantities, (search?.prices ?? prices)?.currency);
  if (limits.length === 0) return null;
  return (
    <section aria-labelledby="margins-head">
      <h2 id="margins-head">Limits of the search</h2>
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
          {limits.map((limit, at) => {
            const words = limitAsSentence(limit, lookup);
            const value = values[limit.quantity];
            const decimals = quantities.find(({ id }) => id === limit.quantity)?.decimals ?? 3;
            const { met, margin } = marginOf(limit, value);
            return (
              <tr key={words}>
                <th scope="row" className="plain">
                  {words}
                </th>
                <td className="number">
                  <MetMark met={met} /> {formatNumber(value, decimals)}
                </td>
                <td className="number">
                  {margin === 0
                    ? 'on the limit'
                    : `${formatNumber(margin, decimals)} ${lookup(limit.quantity).unit}`}
                  {weighing?.limits[at]?.canFlip ? (
                    <span className="caution-word small flip">weighing can turn it</span>
                  ) : null}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
