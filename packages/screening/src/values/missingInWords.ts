import { columns, pairColumns, priceColumn } from '@tiegel/elements';
import type { MissingValue } from './missingFor.ts';

const names = new Map<string, string>(
  [...columns, ...pairColumns, priceColumn].map(({ id, name }) => [id, name.toLowerCase()]),
);

/** What is not known, for people: 'shear modulus of C and Li, density of Xx'. '' where nothing lacks. */
export function missingInWords(missing: readonly MissingValue[]): string {
  const byValue = Map.groupBy(missing, ({ value }) => value);
  return [...byValue]
    .map(([value, of]) => `${names.get(value) ?? value} of ${listed(of.map(({ element }) => element))}`)
    .join(', ');
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join() : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
