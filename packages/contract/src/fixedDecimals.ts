/** A number with a fixed number of decimals, a point and a hyphen as its minus; what is rounded to nothing has none. */
export function fixedDecimals(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^-(?=[0.]+$)/, '');
}
