import { elementOf } from '@tiegel/elements';

/** Names of elements in the order given: 'niobium', 'hafnium and zirconium', 'cobalt, iron and nickel'. */
export function elementsInWords(symbols: readonly string[]): string {
  const names = symbols.map((symbol) => elementOf(symbol)?.name.toLowerCase() ?? symbol);
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** A temperature with the three digits that a model can mean: '1680 K', '67 K'. */
export function kelvinInWords(kelvin: number): string {
  return `${Number(kelvin.toPrecision(3))} K`;
}

/** A number with a fixed number of decimals and the minus sign of print. */
export function numberInWords(value: number, decimals: number): string {
  return value.toFixed(decimals).replace('-', '−');
}

/** A share in whole per cent: '37 %'. */
export function percentInWords(share: number): string {
  return `${Math.round(100 * share)} %`;
}
