import type { Amounts, QuantityView, Substitute } from '@tiegel/contract';
import { limitInWords } from '@tiegel/contract/terms';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { inLocale } from '../../numbers/inLocale.ts';
import { lookupIn, unitText } from '../../server/lookup.ts';
import { alloyAddress } from '../entry/alloyAddress.ts';
import { signed } from '../quantities/changeInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { preferenceOf } from './preferenceOf.ts';

interface SubstituteRowProps {
  alloy: AlloyState;
  item: Substitute;
  columns: readonly QuantityView[];
}

/** One replacement: who goes, who comes, and what that changes. The link opens it as an alloy. */
export function SubstituteRow({ alloy, item, columns }: SubstituteRowProps) {
  const { search, conditions, limits, space, quantities, prices } = alloy;
  const lookup = lookupIn(quantities, prices?.currency);
  const broken = [
    ...limits.filter((_, at) => item.limits[at] !== true).map((limit) => limitInWords(limit, lookup)),
    ...item.outsideSpace,
  ];
  return (
    <tr>
      <th scope="row" className="plain">
        <Link href={alloyAddress(item.composition, conditions, search?.id ?? null)}>
          {amountsInWords(item.replaced)} → {amountsInWords(item.by)}
        </Link>
        <ShareBar composition={item.composition} />
      </th>
      {limits.length > 0 || space !== null ? (
        <td data-label="Limits">
          {broken.length === 0 ? (
            <span className="met">✓ all</span>
          ) : (
            <span>
              <b className="unmet">×</b> {broken.map(inLocale).join('; ')}
            </span>
          )}
        </td>
      ) : null}
      <td className="number" data-label="Unlikeness">
        {formatNumber(item.score, 2)}
      </td>
      <td className="number" data-label="Estimate of one solid solution">
        {item.phase?.singleSolution == null ? 'no basis' : formatNumber(item.phase.singleSolution, 2)}
      </td>
      {columns.map(({ id, name, unit, decimals }) => (
        <td
          key={id}
          className="number"
          data-label={unit === '' ? name : `${name}, ${unitText(unit, prices?.currency)}`}
        >
          {formatNumber(item.quantities[id], decimals)}
          <Change
            change={item.changes[id] ?? null}
            decimals={decimals}
            better={preferenceOf(id, search, item)}
          />
        </td>
      ))}
    </tr>
  );
}

interface ChangeProps {
  change: number | null;
  decimals: number;
  /** whether the search likes the change; null where it does not say */
  better: boolean | null;
}

function Change({ change, decimals, better }: ChangeProps) {
  if (change === null) return null;
  const word = better === null ? '' : better ? ' better' : ' worse';
  return (
    <span className={`change small ${better === null ? 'quiet' : better ? 'change-better' : 'change-worse'}`}>
      {signed(change, decimals)}
      {word}
    </span>
  );
}

/** '20 Co', '10 Mn + 10 Ni' */
function amountsInWords(amounts: Amounts): string {
  return Object.entries(amounts)
    .map(
      ([symbol, amount]) =>
        `${formatNumber(amount, Number.isInteger(Number(amount.toFixed(6))) ? 0 : 2)} ${symbol}`,
    )
    .join(' + ');
}
