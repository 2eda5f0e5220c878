/** Decimals by which a number shows four significant digits. */
export function significantDecimals(value: number): number {
  if (value === 0) return 0;
  return Math.min(12, Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value)))));
}
