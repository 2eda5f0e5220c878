import type { Phase } from '@tiegel/insight';
import type { Quantity, QuantityValues, Strength, StrengthRecord } from '@tiegel/screening';
import { wrapped } from './inWords.ts';

/** The values of an alloy, with what tells how far to trust some of them. */
export interface Trusted {
  quantities: QuantityValues;
  phase: Phase;
  strength: StrengthRecord;
}

const NO_BASIS = '*';
const OUTSIDE = '†';
const AT_LEAST = '≥ ';

/** A far alloy has a value all the same, which says nothing. */
export const isGroundless = ({ id, basis }: Quantity, { quantities, phase }: Trusted): boolean =>
  basis !== undefined && phase.basis === 'none' && (quantities[id] ?? null) !== null;

/**
 * A value as the table shows it, with its mark: an estimate without a basis not at all, a strength by
 * whether the alloy is of the kind that its model was tested on.
 */
export function marked(quantity: Quantity, shown: string | null, one: Trusted): string | null {
  const { id } = quantity;
  const { strength } = one;
  if (isGroundless(quantity, one)) return `–${NO_BASIS}`;
  if (id === 'yieldStrengthFcc') return ofStrength(shown, strength.fcc);
  if (id === 'yieldStrengthBcc') return ofStrength(shown, strength.bcc);
  return shown;
}

function ofStrength(shown: string | null, { domain }: Strength): string | null {
  if (shown === null || domain === 'inside') return shown;
  return domain === 'outside' ? shown + OUTSIDE : AT_LEAST + shown;
}

/**
 * What the marks that stand in the lines of a table mean.
 * @param asked the quantities of the table
 * @param from how many alloys stand in tables before this one
 */
export function* marksInWords(
  lines: readonly string[],
  all: readonly Trusted[],
  asked: readonly Quantity[],
  from: number,
): Generator<string> {
  const distances = all.flatMap((one, place) =>
    asked.some((quantity) => isGroundless(quantity, one))
      ? [`${(100 * one.phase.nearestDistance).toFixed(0)} % away (${from + place + 1})`]
      : [],
  );
  const has = (mark: string) => lines.some((line) => line.includes(mark));
  if (distances.length > 0)
    yield `${wrapped(`${NO_BASIS} No basis for the estimate: nearest published alloy ${distances.join(', ')}.`)}\n`;
  if (has(OUTSIDE)) yield `${wrapped(`${OUTSIDE} Outside what the model of the strength was tested on.`)}\n`;
  if (has(AT_LEAST))
    yield `${wrapped(`${AT_LEAST}A lower bound: other dislocations decide, and the alloy is stronger.`)}\n`;
}
