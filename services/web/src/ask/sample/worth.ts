import { parseNumber } from '../../numbers/parseNumber.ts';
import type { RankRow } from '../draft/draft.ts';

/** A wish of a ranking as numbers; null where an anchor is not set or cannot be read. */
export interface Wish {
  prefer: RankRow['prefer'];
  target: number | null;
  from: number | null;
  to: number | null;
  within: number | null;
  shape: number;
}

export function wishOf({ prefer, target, from, to, within, shape }: RankRow): Wish {
  const bend = numberIn(shape);
  return {
    prefer,
    target: numberIn(target),
    from: numberIn(from),
    to: numberIn(to),
    within: numberIn(within),
    shape: bend !== null && bend > 0 ? bend : 1,
  };
}

function numberIn(text: string): number | null {
  const parsed = parseNumber(text);
  return 'value' in parsed ? parsed.value : null;
}

/**
 * What a value is worth, 0 to 1, once every anchor is set: ((y − from)/(to − from))^shape held
 * between 0 and 1; low mirrors it; a target falls off to 0 at `within` on both sides.
 * @source Derringer & Suich, J. Qual. Technol. 12 (1980) 214 (equations from memory)
 */
export function worthAt({ prefer, target, from, to, within, shape }: Wish, value: number): number {
  const held = (part: number) => Math.min(1, Math.max(0, part)) ** shape;
  if (prefer === 'target') return held(1 - Math.abs(value - target!) / within!);
  const part = (value - from!) / (to! - from!);
  return held(prefer === 'high' ? part : 1 - part);
}

/** Values between which most of a sample lies, to begin with: 5 % and 95 %, and the middle. */
function quantilesOf(
  values: readonly (number | null)[],
): { low: number; middle: number; high: number } | null {
  const sorted = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (sorted.length === 0) return null;
  const at = (part: number) => sorted[Math.round(part * (sorted.length - 1))]!;
  return { low: at(0.05), middle: at(0.5), high: at(0.95) };
}

/** The wish with the anchors that are not set yet taken from a sample, on the steps of its axis. */
export function withAnchors(wish: Wish, values: readonly (number | null)[], step: number): Wish | null {
  const found = quantilesOf(values);
  if (!found) return null;
  const onStep = (value: number) => Number((Math.round(value / step) * step).toPrecision(10));
  const { low, middle, high } = found;
  const from = wish.from ?? onStep(Math.min(low, (wish.to ?? high) - step));
  return {
    ...wish,
    from,
    to: wish.to ?? onStep(Math.max(high, from + step)),
    target: wish.target ?? onStep(middle),
    within: wish.within ?? onStep(Math.max(step, (high - low) / 2)),
  };
}
