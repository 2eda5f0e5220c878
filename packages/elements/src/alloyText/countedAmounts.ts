import { counted, type Item, readItems } from './readItems.ts';

/** What a reader of an alloy text counts that its writer may have meant otherwise. */
export interface CountedAmounts {
  /** of what stands outside brackets, brackets as one */
  total: number;
  /** whether any amount was written at all */
  written: boolean;
  /** symbols and brackets without an amount, each beside the largest amount there: Mn in Fe70Mn */
  withoutAmount: { what: string; counted: number; beside: number }[];
  /** brackets whose amount could be that of each part, too: (FeCo)2 in (FeCo)2Ni, where nothing adds up to 1 or 100 */
  shared: { what: string; amount: number }[];
}

/** What parseAlloy counts in a text that it reads. */
export function countedAmounts(text: string): CountedAmounts {
  const { items } = readItems(text);
  const groups = groupsIn(items);
  return {
    total: totalOf(items),
    written: groups.flat().some(({ amount }) => amount !== null),
    withoutAmount: groups.flatMap(withoutAmount),
    shared: groups.flatMap(shared),
  };
}

/** What stands beside each other: outside brackets, and in each. */
const groupsIn = (items: readonly Item[]): (readonly Item[])[] =>
  items.length === 0 ? [] : [items, ...items.flatMap((item) => groupsIn(item.items))];

const totalOf = (items: readonly Item[]): number => items.reduce((sum, item) => sum + counted(item), 0);

function withoutAmount(items: readonly Item[]): CountedAmounts['withoutAmount'] {
  const beside = Math.max(...items.map(({ amount }) => amount ?? 0));
  return items
    .filter(({ amount }) => amount === null)
    .map((item) => ({ what: named(item), counted: counted(item), beside }));
}

function shared(items: readonly Item[]): CountedAmounts['shared'] {
  if (items.length === 1 || isWhole(totalOf(items))) return [];
  return items.flatMap(({ symbol, items: inner, amount }) =>
    symbol !== null || amount === null || totalOf(inner) === 1
      ? []
      : [{ what: named({ symbol, items: inner }), amount }],
  );
}

const isWhole = (total: number): boolean => [1, 100].some((whole) => Math.abs(total / whole - 1) < 1e-9);

const named = ({ symbol, items }: Pick<Item, 'symbol' | 'items'>): string =>
  symbol ?? `(${items.map(named).join('')})`;
