import { formatComposition } from '@tiegel/elements';
import { candidateAddress } from '../../look/candidateAddress.ts';
import { writeConditions } from '../conditions/conditionState.ts';

type Amounts = Readonly<Record<string, number>>;

/** The address of the page of an alloy, in the light of a search where there is one. */
export function alloyAddress(
  composition: Amounts,
  conditions: Record<string, number> = {},
  searchId: string | null = null,
): string {
  const path =
    searchId === null
      ? `/alloys/${formatComposition(composition)}`
      : candidateAddress(searchId, { ...composition });
  const query = writeConditions(new URLSearchParams(), conditions).toString();
  return query === '' ? path : `${path}?${query}`;
}
