import type { Composition } from './valuesOf.ts';

/** The symbols of the elements of which a composition has something. */
export function presentIn(composition: Composition): string[] {
  return Object.keys(composition).filter((symbol) => composition[symbol]! > 0);
}
