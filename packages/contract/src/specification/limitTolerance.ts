/** How near to a limit a value lies on it: 1e-12·max(1, |limit|), in the unit of the limit. */
export function limitTolerance(limit: number): number {
  return 1e-12 * Math.max(1, Math.abs(limit));
}
