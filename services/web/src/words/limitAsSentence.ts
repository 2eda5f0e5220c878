import type { Limit, Lookup } from '@tiegel/contract';
import { limitInWords } from '@tiegel/contract/terms';
import { asSentence } from './asSentence.ts';

/** A limit as a line or a sentence of its own: 'Density ≤ 8 g/cm³', 'yieldPerMass ≥ 1' of an expression, which is called by its id. */
export function limitAsSentence(limit: Limit, lookup: Lookup): string {
  const { name } = lookup(limit.quantity);
  return asSentence(limitInWords(limit, lookup), name === limit.quantity ? [name] : []);
}
