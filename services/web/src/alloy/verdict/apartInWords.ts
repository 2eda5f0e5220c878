import { decimalsBeside } from '@tiegel/contract/terms';
import { formatNumber, formatPercent } from '../../numbers/formatNumber.ts';

/** Farther than this many % of the atoms from every alloy that it learnt from, the estimate says nothing. */
export const farthestPercent = 22;

/** A distance as a share of atoms, with the decimals that show on which side of that border it lies: '18.0 %', '22.03 %'. */
export function apartInWords(distance: number): string {
  const decimals = decimalsBeside(100 * distance, farthestPercent, 1);
  return decimals > 1 ? `${formatNumber(100 * distance, decimals)} %` : formatPercent(distance, 1);
}
