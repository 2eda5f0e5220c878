/** How many times the greatest value must exceed the middle one. */
const farAbove = 20;

/**
 * Whether values show more on a logarithmic axis: all above 0, and the greatest so far above the
 * middle one that a linear axis would press most of them into its foot.
 */
export function asksForLogarithm(values: readonly (number | null)[]): boolean {
  const known = values.filter((value) => value !== null).sort((a, b) => a - b);
  const [least, middle, greatest] = [known[0], known[known.length >> 1], known.at(-1)];
  return least !== undefined && least > 0 && greatest! > farAbove * middle!;
}
