import type { Limit, WeighingError } from '@tiegel/contract';
import { marginOf } from '@tiegel/contract/terms';
import type { ReactNode } from 'react';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { lookupIn } from '../../server/lookup.ts';
import { limitAsSentence } from '../../words/limitAsSentence.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { knownOfKept } from './knownOfKept.ts';
import { MetMark } from './MetMark.tsx';

interface LimitMarginsProps {
  alloy: AlloyState;
  /** what weighing can turn, where it was asked */
  weighing: WeighingError | null;
}

/** Each limit of the search, the alloy's value, and how much room is left to the nearer bound. */
export function LimitMargins({ alloy, weighing }: LimitMarginsProps) {
  const { search } = alloy;
  if (search === null) return null;
  const { limits, keptOnly = [] } = search.specification;
  if (limits.length + keptOnly.length === 0) return null;
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
          {limits.map((limit) => (
            <LimitRow key={JSON.stringify(limit)} alloy={alloy} limit={limit}>
              {weighing?.limits[alloy.limits.indexOf(limit)]?.canFlip ? (
                <span className="caution-word small flip">weighing can turn it</span>
              ) : null}
            </LimitRow>
          ))}
          {keptOnly.map((limit) => (
            <LimitRow key={JSON.stringify(limit)} alloy={alloy} limit={limit} ofKept />
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface LimitRowProps {
  alloy: AlloyState;
  limit: Limit;
  /** asked of kept candidates only */
  ofKept?: boolean;
  children?: ReactNode;
}

function LimitRow({ alloy, limit, ofKept = false, children }: LimitRowProps) {
  const { values, quantities, search, prices } = alloy;
  const known = [...quantities, ...(search?.moreQuantities ?? [])];
  const lookup = lookupIn(known, (search?.prices ?? prices)?.currency);
  const value = values[limit.quantity];
  const decimals = known.find(({ id }) => id === limit.quantity)?.decimals ?? 3;
  const { met, margin } = marginOf(limit, value);
  return (
    <tr>
      <th scope="row" className="plain">
        {limitAsSentence(limit, lookup)}
        {ofKept ? <span className="small quiet limit-of-kept"> applied to the kept ones only</span> : null}
      </th>
      {value === undefined ? (
        <td colSpan={2} className="quiet small">
          {knownOfKept}
        </td>
      ) : (
        <>
          <td className="number">
            <MetMark met={met} /> {formatNumber(value, decimals)}
          </td>
          <td className="number">
            {margin === 0
              ? 'on the limit'
              : `${formatNumber(margin, decimals)} ${lookup(limit.quantity).unit}`}
            {children}
          </td>
        </>
      )}
    </tr>
  );
}
