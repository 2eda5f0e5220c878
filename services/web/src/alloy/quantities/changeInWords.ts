import { formatNumber, noValue } from '../../numbers/formatNumber.ts';

/** A slope per mole fraction as the change by one at.%, with its sign and one decimal more than the value has. */
export function changeInWords(rate: number | null | undefined, decimals: number): string {
  if (rate === null || rate === undefined) return noValue;
  return signed(rate / 100, decimals + 1);
}

/** A difference with its sign; a plain 0 where it rounds to nothing. */
export function signed(difference: number, decimals: number): string {
  const text = formatNumber(difference, decimals);
  return difference > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}
