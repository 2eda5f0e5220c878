/**
 * A number of a table, with that many decimals: with a hyphen as its minus, which other programs read when it is
 * copied, and none before what is rounded to nothing.
 */
export function shownNumber(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(?=[0.]+$)/, '');
}
