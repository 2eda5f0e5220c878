/** What of a box its entropy depends on. */
interface Bounds {
  low: readonly number[];
  high: readonly number[];
  total: number;
}

/** Vertices are gone through for systems of up to so many elements. */
export const mostForVertices = 7;

/**
 * The greatest entropy of a box, exactly as it is computed: the most equal amounts have it. Any
 * others that are not the same amounts in another order have less by more than 1e-7 on the finest
 * grid, far above all rounding; and terms add without any (see entropyTerm).
 *
 * @param terms −c ln c by parts
 */
export function greatestEntropy({ low, high, total }: Bounds, terms: Float64Array): number {
  const elements = low.length;
  let level = Math.floor(total / elements);
  while (sumAt(level, low, high) > total) level -= 1;
  while (level < total && sumAt(level + 1, low, high) <= total) level += 1;
  let extra = total - sumAt(level, low, high);
  let sum = 0;
  for (let at = 0; at < elements; at += 1) {
    const raised = extra > 0 && level >= low[at]! && level < high[at]!;
    if (raised) extra -= 1;
    sum += terms[held(level, low[at]!, high[at]!) + (raised ? 1 : 0)]!;
  }
  return sum;
}

const held = (value: number, low: number, high: number): number => Math.max(low, Math.min(value, high));

function sumAt(level: number, low: readonly number[], high: readonly number[]): number {
  let sum = 0;
  for (let at = 0; at < low.length; at += 1) sum += held(level, low[at]!, high[at]!);
  return sum;
}

/**
 * The least entropy of a box, exactly as it is computed: it lies where all elements but one are
 * at a bound, for the entropy is strictly concave. In systems of many elements less than that: the
 * sum of what each element adds at least.
 */
export function leastEntropy({ low, high, total }: Bounds, terms: Float64Array): number {
  const elements = low.length;
  let rest = total;
  let sum = 0;
  for (let at = 0; at < elements; at += 1) {
    rest -= low[at]!;
    sum += terms[low[at]!]!;
  }
  if (rest === 0) return sum;
  if (elements > mostForVertices) return ofEach(low, high, terms);
  let least = Number.POSITIVE_INFINITY;
  let sides = 0;
  // Amounts change their side one after another, so that every choice comes up once.
  for (let turn = 1; ; turn += 1) {
    if (rest >= 0) {
      for (let free = 0; free < elements; free += 1) {
        const from = low[free]!;
        if ((sides >> free) & 1 || rest > high[free]! - from) continue;
        const here = sum - terms[from]! + terms[from + rest]!;
        if (here < least) least = here;
      }
    }
    if (turn >= 2 ** elements) return least;
    const bit = 31 - Math.clz32(turn & -turn);
    sides ^= 1 << bit;
    const sign = (sides >> bit) & 1 ? 1 : -1;
    rest -= sign * (high[bit]! - low[bit]!);
    sum += sign * (terms[high[bit]!]! - terms[low[bit]!]!);
  }
}

function ofEach(low: readonly number[], high: readonly number[], terms: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < low.length; at += 1) sum += Math.min(terms[low[at]!]!, terms[high[at]!]!);
  return sum;
}
