import { parseNumber } from '../../numbers/parseNumber.ts';
import type { LimitRow } from '../draft/draft.ts';
import type { TriedLimit } from './countPasses.ts';

/** A row of the form as a limit to try; a number that cannot be read is none. */
export function triedLimit({ quantity, min, max }: LimitRow): TriedLimit {
  return { quantity, min: numberIn(min), max: numberIn(max) };
}

function numberIn(text: string): number | null {
  const parsed = parseNumber(text);
  return 'value' in parsed ? parsed.value : null;
}
