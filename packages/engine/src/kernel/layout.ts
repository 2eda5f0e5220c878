import { mostNumbers } from './emit.ts';
import type { Form } from './form.ts';

/**
 * Where a kernel finds and leaves its numbers: byte addresses in its memory. Vectors are two
 * doubles (lane 0, lane 1), 16 bytes.
 */
export interface Layout {
  /** i32 by place in the system: bounds, and the sums of the bounds behind each place. */
  low: number;
  high: number;
  leastBehind: number;
  mostBehind: number;
  /** i32: number of the first point, counted on by the kernel. */
  index: number;
  /** i32: bytes of records. */
  recordEnd: number;
  /** Vectors: the score to reach, and all bits set where every score reaches it. */
  cutOff: number;
  open: number;
  /** Counted on by the kernel, four counters a vector: two numbers of 16 bits for each, one a lane. */
  counters: number;
  /** Vectors: the value of each system constant. */
  constants: number;
  /** Vectors: the numbers of the code itself. */
  numbers: number;
  /** Vectors for each form: its constant, its differences, its second differences. */
  forms: readonly number[];
  /** Doubles: −c ln c by parts. */
  entropy: number;
  /** Doubles: that of both elements of a line, a row by what the two have together, by the parts of the first one. */
  entropyOfLine: number;
  bytesPerRow: number;
  /**
   * Vectors for each condition and level: what each part that is left adds at most to what makes it hold, and
   * what the condition must not exceed then.
   */
  ahead: number;
  records: number;
  bytesPerRecord: number;
  bytes: number;
}

/** Vectors of so many counters. */
export const vectorsOfCounters = (counters: number): number => Math.ceil(counters / 4);

/** So many points of a lane may a call have, unless it is a single line. */
export const pointsPerCall = 30_000;
/** A line may have some more. Every step may become a record. */
export const mostPointsOfCall = pointsPerCall + 1024;
/** So far does a counter reach. */
export const mostCounted = 2 ** 16 - 1;

const VECTOR = 16;

/** Vectors of a form's numbers for systems of so many elements, the last of which takes what is left. */
function vectorsOf({ degree }: Form, elements: number): number {
  const free = elements - 1;
  return 1 + (degree > 0 ? free : 0) + (degree > 1 ? (free * (free + 1)) / 2 : 0);
}

/** A vector may reach one beyond. */
const rowOf = (total: number): number => total + 2;

export function layoutOf(
  forms: readonly Form[],
  elements: number,
  total: number,
  counters: number,
  constants: number,
  conditions: number,
): Layout {
  let end = 0;
  const take = (bytes: number): number => {
    const start = end;
    end += Math.ceil(bytes / VECTOR) * VECTOR;
    return start;
  };
  const bytesPerRecord = 8 + 4 * elements;
  return {
    ...{ low: take(4 * elements), high: take(4 * elements) },
    ...{ leastBehind: take(4 * elements), mostBehind: take(4 * elements) },
    ...{ index: take(4), recordEnd: take(4), cutOff: take(VECTOR), open: take(VECTOR) },
    counters: take(VECTOR * counters),
    constants: take(VECTOR * constants),
    numbers: take(VECTOR * mostNumbers),
    forms: forms.map((form) => take(VECTOR * vectorsOf(form, elements))),
    ...{ entropy: take(8 * (total + 1)), entropyOfLine: take(8 * rowOf(total) * (total + 1)) },
    bytesPerRow: 8 * rowOf(total),
    ahead: take(2 * VECTOR * conditions * elements),
    ...{ records: take(bytesPerRecord * mostPointsOfCall), bytesPerRecord },
    bytes: end,
  };
}
