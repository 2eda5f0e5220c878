import type { Evidence } from '@tiegel/contract';
import { type ComparisonGroup, comparisonGroups } from '@tiegel/contract/terms';
import { silenceInWords } from '@tiegel/screening';
import { isGroundless } from '../alloy/isGroundless.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import { unitText } from '../server/lookup.ts';
import { type Asked, expressionRows, limitRows } from './searchRows.ts';
import type { Compared } from './useCompared.ts';

/** What the page compares: that of every comparison, and what the search asked. */
interface Told extends Asked {
  alloys: readonly Compared[];
  evidence: Evidence | null;
}

/** Everything that is compared, in the order of reading, as the page writes it. */
export function pageGroups(told: Told): ComparisonGroup[] {
  const { alloys, quantities, typical, evidence, currency } = told;
  return comparisonGroups({
    ...{ alloys, typical, written: formatNumber },
    quantities: quantities.map((quantity) => ({ ...quantity, unit: unitText(quantity.unit, currency) })),
    criteria: evidence?.criteria ?? [],
    asked: [
      { head: 'Limits of the search', rows: limitRows(told) },
      { head: 'Expressions of the search', rows: expressionRows(told) },
    ],
    cellOf: (quantity, { values, explanation }) => {
      const groundless = isGroundless(quantity, explanation);
      const value = groundless ? null : (values[quantity.id] ?? null);
      return { value, text: groundless ? 'no basis' : formatNumber(value, quantity.decimals) };
    },
    silence: (id, { composition, values, explanation }) =>
      silenceInWords(id, composition, { ...values, ...explanation?.quantities }),
  });
}
