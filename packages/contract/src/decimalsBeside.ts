/** Nearer to a border than this many decimals tell, a value counts as lying on it. */
const MOST_DECIMALS = 6;

/**
 * With how many decimals to print a value beside a border that decides what is said of it: as many as
 * usual, and more where the printed value would lie on the border or beyond it while the value does not
 * (9.97 beside 10 with one decimal).
 */
export function decimalsBeside(value: number, border: number, usual: number): number {
  const side = Math.sign(value - border);
  for (let decimals = usual; decimals <= MOST_DECIMALS; decimals += 1) {
    if (Math.sign(Number(value.toFixed(decimals)) - border) === side) return decimals;
  }
  return usual;
}
