import { writeConditions } from '../alloy/conditions/conditionState.ts';

/** The address of a comparison: the alloys in order, their conditions, and the search whose limits hold. */
export function compareAddress(
  alloys: readonly string[],
  conditions: Record<string, number> = {},
  searchId: string | null = null,
): string {
  const address = new URLSearchParams(alloys.map((alloy) => ['alloy', alloy]));
  if (searchId !== null) address.set('search', searchId);
  return `/compare?${writeConditions(address, conditions)}`;
}
