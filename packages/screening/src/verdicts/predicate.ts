import { limitTolerance } from '@tiegel/contract/terms';
import type { QuantityValues } from '../values/valuesOf.ts';

/**
 * A statement about a composition, as data: what its quantities, closed or late, and its elements
 * must be. `atLeast` and `atMost` include the bound, `above` and `below` do not.
 */
export type Predicate =
  | ({ kind: 'range'; quantity: string } & Bounds)
  | { kind: 'contains'; anyOf: readonly string[] }
  | { kind: 'onlyOf'; symbols: readonly string[] }
  | { kind: 'every'; of: readonly Predicate[] };

export interface Bounds {
  atLeast?: number;
  above?: number;
  atMost?: number;
  below?: number;
}

/** The quantity, in its own unit, lies within the bounds. */
export function range(quantity: string, bounds: Bounds): Predicate {
  return { kind: 'range', quantity, ...bounds };
}

/** At least one of the elements is present. */
export function contains(...anyOf: string[]): Predicate {
  return { kind: 'contains', anyOf };
}

/** No element but these is present. */
export function onlyOf(...symbols: string[]): Predicate {
  return { kind: 'onlyOf', symbols };
}

/** All of the statements hold. */
export function every(...of: Predicate[]): Predicate {
  return { kind: 'every', of };
}

/**
 * Whether a predicate holds; null where a value that it names is missing, even if another already
 * decides: a rule that could not be checked as a whole has no verdict.
 *
 * @param values of the quantities, by id
 * @param symbols of the elements present
 */
export function predicateHolds(
  predicate: Predicate,
  values: Readonly<QuantityValues>,
  symbols: readonly string[],
): boolean | null {
  switch (predicate.kind) {
    case 'range': {
      const value = values[predicate.quantity] ?? null;
      return value === null ? null : isWithin(value, predicate);
    }
    case 'contains':
      return predicate.anyOf.some((symbol) => symbols.includes(symbol));
    case 'onlyOf':
      return symbols.every((symbol) => predicate.symbols.includes(symbol));
    case 'every': {
      const verdicts = predicate.of.map((one) => predicateHolds(one, values, symbols));
      return verdicts.includes(null) ? null : !verdicts.includes(false);
    }
  }
}

/** A value lies on a bound within 1e-12·max(1, |bound|), as on a limit of a search. */
function isWithin(value: number, { atLeast, above, atMost, below }: Bounds): boolean {
  const over = (bound: number) => value - bound > limitTolerance(bound);
  const under = (bound: number) => bound - value > limitTolerance(bound);
  return (
    (atLeast === undefined || !under(atLeast)) &&
    (above === undefined || over(above)) &&
    (atMost === undefined || !over(atMost)) &&
    (below === undefined || under(below))
  );
}

/** The ids of the quantities that a predicate names, each once. */
export function quantitiesOf(predicate: Predicate): string[] {
  if (predicate.kind === 'range') return [predicate.quantity];
  if (predicate.kind !== 'every') return [];
  return [...new Set(predicate.of.flatMap(quantitiesOf))];
}
