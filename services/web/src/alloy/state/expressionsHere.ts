import type { Quantity } from '@tiegel/screening';
import { readExpressions } from '../../ask/own/readExpressions.ts';

/** Expressions of a search that can be worked out here: not those that name columns of somebody's own. */
export function expressionsHere(lets: Readonly<Record<string, string>> = {}): Quantity[] {
  return readExpressions(Object.entries(lets).map(([name, text]) => ({ name, text }))).flatMap(
    ({ quantity }) => quantity ?? [],
  );
}
