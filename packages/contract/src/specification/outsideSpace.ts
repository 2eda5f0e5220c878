import { effectivePool } from './effectivePool.ts';
import type { SearchSpecification } from './specification.ts';

/** Which alloys a search looks at, before any limit: their elements, how many, and how much of each. */
export type SearchSpace = Pick<SearchSpecification, 'elements' | 'components' | 'fractions'>;

/** at.%; the text of a composition has nine decimals. */
const ROUNDING = 1e-6;

/**
 * Why no search of this space could give the alloy, in words, such as 'Co is forbidden' or 'Ni 40 at.%, at most 35';
 * empty where it lies in it. The step is no part of it: it says how closely a search looks, and an alloy between two
 * steps is what was asked for as much as its neighbours are.
 *
 * @param composition at.%, 100 in sum
 */
export function outsideSpace(composition: Readonly<Record<string, number>>, space: SearchSpace): string[] {
  const { elements, components, fractions } = space;
  const present = Object.keys(composition)
    .filter((symbol) => composition[symbol]! > 0)
    .sort();
  const pool = effectivePool(elements);
  const strangers = present.filter((symbol) => !pool.includes(symbol));
  const missing = elements.require.filter((symbol) => !present.includes(symbol)).sort();
  return [
    ...strangers.map((symbol) =>
      elements.forbid.includes(symbol) ? `${symbol} is forbidden` : `${symbol} is not in the pool`,
    ),
    ...missing.map((symbol) => `${symbol} is required`),
    ...componentsOutside(present.length, components),
    ...sharesOutside(
      composition,
      present.filter((symbol) => pool.includes(symbol)),
      fractions,
    ),
  ];
}

function componentsOutside(count: number, { min, max }: SearchSpace['components']): string[] {
  const bound = count < min ? `at least ${min}` : count > max ? `at most ${max}` : null;
  return bound === null ? [] : [`${count} ${count === 1 ? 'element' : 'elements'}, ${bound}`];
}

function sharesOutside(
  composition: Readonly<Record<string, number>>,
  symbols: readonly string[],
  fractions: SearchSpace['fractions'],
): string[] {
  if (fractions === 'equimolar') {
    const amounts = Object.values(composition).filter((amount) => amount > 0);
    return Math.max(...amounts) - Math.min(...amounts) > ROUNDING ? ['the shares are not equal'] : [];
  }
  return symbols.flatMap((symbol) => {
    const amount = composition[symbol]!;
    const { min, max } = { min: fractions.min, max: fractions.max, ...fractions.each[symbol] };
    if (amount < min - ROUNDING) return [`${symbol} ${shown(amount, min)} at.%, at least ${min}`];
    return amount > max + ROUNDING ? [`${symbol} ${shown(amount, max)} at.%, at most ${max}`] : [];
  });
}

/** Two decimals, unless they hide that the amount is not the bound. */
function shown(amount: number, bound: number): number {
  const short = Number(amount.toFixed(2));
  return short === bound ? Number(amount.toFixed(6)) : short;
}
