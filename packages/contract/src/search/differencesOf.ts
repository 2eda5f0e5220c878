import { nameInSentence } from '../nameInSentence.ts';
import type { Limit, RankEntry } from '../specification/specification.ts';
import { type Lookup, limitInWords } from './questionOf.ts';
import type { SearchView } from './search.ts';
import type { Difference } from './searchDifferences.ts';

/** What the words are made of: every quantity that is known to all searches, the conditions by name, and how numbers of a sentence are written. */
export interface DifferenceWords {
  quantities: readonly { id: string; name: string; unit: string }[];
  conditions: Readonly<Record<string, { label: string; unit: string }>>;
  /** left out: with a decimal point */
  inLocale?: (sentence: string) => string;
}

type Asking = Pick<
  SearchView,
  'specification' | 'moreQuantities' | 'dataVersion' | 'engineVersion' | 'prices'
>;

/** What another search asked, or was computed from, differently: specification, data, engine, prices. The name of a search asks nothing. */
export function differencesOf(before: Asking, after: Asking, words: DifferenceWords): Difference[] {
  const [first, second] = [asked(before, words), asked(after, words)];
  const places = [...new Set([...first.keys(), ...second.keys()])];
  const rest = [
    ['Data version', before.dataVersion, after.dataVersion],
    ['Engine version', before.engineVersion, after.engineVersion],
    ['Prices', pricesInWords(before), pricesInWords(after)],
  ] as const;
  return [
    ...places.map((what) => ({ what, before: first.get(what) ?? null, after: second.get(what) ?? null })),
    ...rest.map(([what, one, other]) => ({ what, before: one, after: other })),
  ].filter((one) => one.before !== one.after);
}

/**
 * What a search asks, as places and what stands there in words. Limits and wishes are named by their quantity,
 * so that one more does not seem to change all behind it.
 */
function asked(search: Asking, words: DifferenceWords): Map<string, string> {
  const { version: _version, name: _name, ...parts } = search.specification;
  const { limits = [], keptOnly = [], rank = [], front = [], lets = {}, ...others } = parts;
  const { conditions, inLocale = (sentence: string) => sentence } = words;
  const nameOf = lookupIn(search, words);
  const called = (quantity: string) => nameInSentence(quantity, nameOf(quantity).name);
  const limited = (what: string, some: readonly Limit[]) =>
    some.map((one) => [`${what} ${called(one.quantity)}`, inLocale(limitInWords(one, nameOf))] as const);
  return new Map([
    ...flat(others).map(([place, value]) => [placeInWords(place, conditions), inLocale(value)] as const),
    ...limited('Limit on', limits),
    ...limited('Of the kept ones,', keptOnly),
    ...rank.map((one) => [`Ranking by ${called(one.quantity)}`, inLocale(wishInWords(one))] as const),
    ...front.map((one) => [`Best compromises in ${called(one.quantity)}`, preferWords[one.prefer]] as const),
    ...Object.entries(lets).map(([merit, formula]) => [`Expression ${merit}`, formula] as const),
  ]);
}

/** Names and units as a search has them, with the currency of its prices; the id itself for a quantity that it does not know. */
function lookupIn({ moreQuantities, prices }: Asking, { quantities }: DifferenceWords): Lookup {
  const byId = new Map([...quantities, ...moreQuantities].map((quantity) => [quantity.id, quantity]));
  return (id) => {
    const { name = id, unit = '' } = byId.get(id) ?? {};
    return { name, unit: unit.replace('currency', prices?.currency ?? 'currency') };
  };
}

/** The places of a specification as people call them; `each` and conditions are made of their parts. */
const placeWords: Readonly<Record<string, string>> = {
  'elements pool': 'Elements that may be in it',
  'elements require': 'Elements that must be in it',
  'elements forbid': 'Elements that must not be in it',
  'components min': 'Number of elements, from',
  'components max': 'Number of elements, to',
  fractions: 'Shares',
  'fractions step': 'Step of the grid, at.%',
  'fractions min': 'Each element, at least, at.%',
  'fractions max': 'Each element, at most, at.%',
  keep: 'Kept of all',
  keepPerSystem: 'Kept of each system',
  tally: 'What is counted',
};

const preferWords = { high: 'as high as possible', low: 'as low as possible' };

function placeInWords(place: string, conditions: DifferenceWords['conditions']): string {
  const [, symbol, edge] = /^fractions each (\S+) (min|max)$/.exec(place) ?? [];
  if (symbol) return `${symbol}, ${edge === 'min' ? 'at least' : 'at most'}, at.%`;
  const [, named = ''] = /^conditions (\S+)$/.exec(place) ?? [];
  const condition = conditions[named];
  if (condition) return `${condition.label}, ${condition.unit}`;
  return placeWords[place] ?? place;
}

/** Values inside each other as places and texts; lists of words in one order, for theirs says nothing, and none for an empty one. */
function flat(value: unknown, place = ''): [string, string][] {
  if (Array.isArray(value)) return value.length === 0 ? [] : [[place, value.toSorted().join(' ')]];
  if (typeof value !== 'object' || value === null) return [[place, String(value)]];
  return Object.entries(value).flatMap(([key, inner]) => flat(inner, place === '' ? key : `${place} ${key}`));
}

/** 'as low as possible, worth 0 to 1 from 3 to 6, weight 2' */
function wishInWords({ prefer, from, to, within, weight, shape }: RankEntry): string {
  return [
    typeof prefer === 'object' ? `near ${prefer.target}` : preferWords[prefer],
    from === undefined || to === undefined ? '' : `worth 0 to 1 from ${from} to ${to}`,
    within === undefined ? '' : `within ${within}`,
    weight === undefined ? '' : `weight ${weight}`,
    shape === undefined ? '' : `shape ${shape}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function pricesInWords({ prices }: Asking): string {
  return prices === null
    ? 'none'
    : `${prices.date}, ${prices.currency}${prices.invented ? ', invented' : ''}`;
}
