import { formatNumber } from './formatNumber.ts';

/** So many decimals more than usual are worth reading. */
const more = 4;

/** An interval with decimals enough to tell its ends apart, at least as many as are given: '8.99992 to 9.00008'. */
export function formatInterval(least: number, greatest: number, decimals: number): string {
  const width = greatest - least;
  const needed = width > 0 ? 1 - Math.floor(Math.log10(width)) : 0;
  const shown = Math.min(decimals + more, Math.max(decimals, needed));
  return `${formatNumber(least, shown)} to ${formatNumber(greatest, shown)}`;
}
