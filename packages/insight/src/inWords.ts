import { fixedDecimals } from '@tiegel/contract/terms';
import { elementOf } from '@tiegel/elements';

/** Names of elements in the order given: 'niobium', 'hafnium and zirconium', 'cobalt, iron and nickel'. */
export function elementsInWords(symbols: readonly string[]): string {
  const names = symbols.map((symbol) => elementOf(symbol)?.name.toLowerCase() ?? symbol);
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/**
 * A temperature with the three digits that a model can mean: '1680 K', '67 K'.
 * @param beside another one that it is compared with: of two that differ below these digits more are told,
 *   the same number of both
 */
export function kelvinInWords(kelvin: number, beside = kelvin): string {
  const side = Math.sign(kelvin - beside);
  const told = (value: number, digits: number) => Number(value.toPrecision(digits));
  const digits = [3, 4, 5, 6].find((some) => Math.sign(told(kelvin, some) - told(beside, some)) === side);
  return `${told(kelvin, digits ?? 3)} K`;
}

/** A temperature that somebody set, to the kelvin, as pages and fields tell it: '1273 K'. */
export function setKelvinInWords(kelvin: number): string {
  return `${Math.round(kelvin)} K`;
}

/** A number with a fixed number of decimals and the minus sign of print; what is rounded to nothing has none. */
export function numberInWords(value: number, decimals: number): string {
  return fixedDecimals(value, decimals).replace('-', '−');
}

/** A share in whole per cent: '37 %', or with more decimals: '22.5 %'. */
export function percentInWords(share: number, decimals = 0): string {
  return `${numberInWords(100 * share, decimals)} %`;
}
