import { printedUnit } from '@tiegel/contract/terms';
import { quantityById } from '@tiegel/screening';
import { numberInWords } from '../inWords.ts';

/** A quantity in a sentence: 'mixing enthalpy −4.16 kJ/mol'; null where it has no value. */
export function quantityInWords(id: string, value: number | null | undefined): string | null {
  if (value === null || value === undefined) return null;
  const { name, unit, decimals } = quantityById(id);
  const plain = name.charAt(0).toLowerCase() + name.slice(1);
  return `${plain} ${numberInWords(value, decimals)}${unit === '' ? '' : ` ${printedUnit(unit)}`}`;
}
