import { problem } from '@tiegel/contract/terms';
import type { Quantity } from '../definition/quantity.ts';
import { functions } from './functions.ts';

/**
 * A name that formulas can name: a letter, then letters, digits and underscores, at most 64; no other thing's.
 * @throws ProblemError expression/name, expression/name-taken
 */
export function refuseName(name: string, known: readonly Quantity[], pointer: string): void {
  if (!/^[a-zA-Z][a-zA-Z0-9_]{0,63}$/.test(name))
    throw problem('expression/name', { name: name.slice(0, 64) }, pointer);
  if (functions.has(name) || known.some(({ id }) => id === name)) {
    throw problem('expression/name-taken', { name }, pointer);
  }
}
