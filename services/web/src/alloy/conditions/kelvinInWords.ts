import { formatNumber } from '../../numbers/formatNumber.ts';

/** A temperature (K) as people of both habits read it: '1,684 K (1,411 °C)'. */
export function kelvinInWords(kelvin: number): string {
  return `${formatNumber(kelvin, 0)} K (${formatNumber(kelvin - 273.15, 0)} °C)`;
}
