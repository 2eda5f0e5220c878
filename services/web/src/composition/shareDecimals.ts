/** Decimals that a grid of this step needs (at.%); two where shares are equal and lie on no grid. */
export function shareDecimals(fractions: 'equimolar' | { step: number }): number {
  if (fractions === 'equimolar') return 2;
  return String(fractions.step).split('.')[1]?.length ?? 0;
}
