import type { Evidence, QuantityView, SearchView, TypicalRanges } from '@tiegel/contract';
import { type ComparisonGroup, comparisonGroups, searchGroups, toldOnce } from '@tiegel/contract/terms';
import { silenceInWords } from '@tiegel/screening';
import { isGroundless } from '../alloy/quantities/isGroundless.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import { lookupIn, unitText } from '../server/lookup.ts';
import { limitAsSentence } from '../words/limitAsSentence.ts';
import type { Compared } from './useCompared.ts';

/** What the page compares: that of every comparison, and what the search asked. */
interface Told {
  alloys: readonly Compared[];
  quantities: readonly QuantityView[];
  typical: TypicalRanges | null;
  evidence: Evidence | null;
  currency: string | undefined;
  /** whose limits and expressions are compared; null for none, and while it is not known */
  search: SearchView | null;
}

/** Everything that is compared, in the order of reading, as the page writes it. */
export function pageGroups(told: Told): ComparisonGroup[] {
  const { alloys, quantities, typical, evidence, currency, search } = told;
  const ofSearch = search?.prices?.currency ?? currency;
  const lookup = lookupIn([...quantities, ...(search?.moreQuantities ?? [])], ofSearch);
  const groups = comparisonGroups({
    ...{ alloys, typical, written: formatNumber },
    quantities: quantities.map((quantity) => ({ ...quantity, unit: unitText(quantity.unit, currency) })),
    criteria: evidence?.criteria ?? [],
    asked: searchGroups({
      ...{ alloys, quantities, typical, search, written: formatNumber },
      limitAs: (limit) => limitAsSentence(limit, lookup),
      unitAs: (unit) => unitText(unit, ofSearch),
    }),
    cellOf: (quantity, { values, explanation }) => {
      const groundless = isGroundless(quantity, explanation);
      const value = groundless ? null : (values[quantity.id] ?? null);
      return { value, text: groundless ? 'no basis' : formatNumber(value, quantity.decimals) };
    },
    silence: (id, { composition, values, explanation }) =>
      silenceInWords(id, composition, { ...values, ...explanation?.quantities }),
  });
  return toldOnce(groups, 'one-phase', 'singlePhaseEstimate');
}
