import { limitInWords } from '@tiegel/contract/terms';
import { inLocale } from '../../numbers/inLocale.ts';
import { lookupIn } from '../../server/lookup.ts';
import type { AlloyState } from '../state/alloyState.ts';

/** Which limits of the search the server does not test on other alloys, as a sentence; '' where it tests them all. */
export function untestedInWords({
  search,
  limits,
  quantities,
}: Pick<AlloyState, 'search' | 'limits' | 'quantities'>): string {
  const untested = search?.specification.limits.filter((limit) => !limits.includes(limit)) ?? [];
  if (search === null || untested.length === 0) return '';
  const lookup = lookupIn([...quantities, ...search.moreQuantities], search.prices?.currency);
  const words = untested.map((limit) => inLocale(limitInWords(limit, lookup))).join('; ');
  return ` Not tested here, since the search alone has such a quantity: ${words}.`;
}
