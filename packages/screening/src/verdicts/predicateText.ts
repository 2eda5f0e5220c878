import { quantities } from '../quantities/index.ts';
import type { Bounds, Predicate } from './predicate.ts';

/** How a quantity is written: its symbol, and its unit as printed. */
export interface Named {
  symbol: string;
  unit: string;
}

/**
 * A predicate as it is written in papers: '−15 ≤ ΔH ≤ 5 kJ/mol, δ ≤ 6.5 %'.
 *
 * @param named how quantities are written beyond the closed ones, by id; one that nobody names
 *   stands by its id
 */
export function predicateText(predicate: Predicate, named: Readonly<Record<string, Named>> = {}): string {
  switch (predicate.kind) {
    case 'range': {
      const { quantity: id } = predicate;
      return rangeText(
        named[id] ?? quantities.find((quantity) => quantity.id === id) ?? { symbol: id, unit: '' },
        predicate,
      );
    }
    case 'contains':
      return `with ${predicate.anyOf.join(' or ')}`;
    case 'onlyOf':
      return `of ${predicate.symbols.join(', ')} alone`;
    case 'every':
      return predicate.of.map((one) => predicateText(one, named)).join(', ');
  }
}

function rangeText({ symbol, unit }: Named, { atLeast, above, atMost, below }: Bounds): string {
  const upper = below === undefined ? upperText('≤', atMost) : upperText('<', below);
  const least = above ?? atLeast;
  const sign = above === undefined ? ['≤', '≥'] : ['<', '>'];
  const text =
    least === undefined
      ? `${symbol}${upper}`
      : upper === ''
        ? `${symbol} ${sign[1]} ${printed(least)}`
        : `${printed(least)} ${sign[0]} ${symbol}${upper}`;
  return unit === '' ? text : `${text} ${unit}`;
}

const upperText = (sign: string, bound: number | undefined) =>
  bound === undefined ? '' : ` ${sign} ${printed(bound)}`;

/** Four digits, no trailing zeros, the minus sign of print. */
const printed = (value: number) => String(Number(value.toPrecision(4))).replace('-', '−');
