import { countedAmounts } from '@tiegel/elements';
import { entryText } from '../numbers/parseNumber.ts';

/** Says of an alloy as it was typed what its amounts make, where that is not 100; '' for an alloy without amounts. */
export function totalInWords(typed: string): string {
  const { total, written } = countedAmounts(typed);
  if (!written || Math.abs(total - 100) < 1e-6) return '';
  return `The amounts make ${entryText(Number(total.toFixed(3)))}; they are taken as parts of it.`;
}
