import { formatNumber } from '../../numbers/formatNumber.ts';

/** An enthalpy of mixing of a pair (kJ/mol) as the data have it: whole numbers as they are, halves as halves. */
export function enthalpyText(value: number): string {
  return formatNumber(value, Number.isInteger(value) ? 0 : 1);
}
