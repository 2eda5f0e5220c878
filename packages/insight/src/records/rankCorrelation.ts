/**
 * Spearman's rank correlation, −1 to 1; equal values share the mean of their ranks. NaN where all
 * values of a list are equal.
 * @source Spearman, Am. J. Psychol. 15 (1904) 72 (from memory)
 */
export function rankCorrelation(one: readonly number[], other: readonly number[]): number {
  const [a, b] = [centredRanks(one), centredRanks(other)];
  const product = (x: readonly number[], y: readonly number[]) =>
    x.reduce((sum, value, at) => sum + value * y[at]!, 0);
  return product(a, b) / Math.sqrt(product(a, a) * product(b, b));
}

function centredRanks(values: readonly number[]): number[] {
  const sorted = values.toSorted((a, b) => a - b);
  const centre = (values.length - 1) / 2;
  return values.map((value) => (sorted.indexOf(value) + sorted.lastIndexOf(value)) / 2 - centre);
}
