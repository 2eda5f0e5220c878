import type { Chunk } from '@tiegel/contract';
import type { Prepared } from '../prepared/prepare.ts';
import { keyOf } from '../prepared/ranking.ts';
import type { EvaluatePoint } from './pointEvaluator.ts';

/** Where more than one point in so many is kept, the order of the systems saves more than it costs. */
const muchIsKept = 1000;
/** And where a system has more points than this, for then the order costs next to nothing. */
const manyPoints = 30_000;

/**
 * The order in which the systems of a chunk are swept: their distances from its first (a number may be above
 * 2^31), the promising ones first where much is kept; null: by their numbers.
 */
export function systemOrder(
  prepared: Prepared,
  { firstSystem, endSystem, points }: Chunk,
  scoreAt: EvaluatePoint,
): Int32Array | null {
  const many = endSystem - firstSystem;
  const isWorthWhile =
    many > 1 && (prepared.ranking.keep * muchIsKept > points || points / many > manyPoints);
  return isWorthWhile ? promisingFirst(prepared, firstSystem, endSystem, scoreAt) : null;
}

/** By the score in the middle of each system. The sooner the best are found, the fewer others are kept for a while. */
function promisingFirst(
  { systems, ranking }: Prepared,
  first: number,
  end: number,
  scoreAt: EvaluatePoint,
): Int32Array {
  const keys = new Float64Array(end - first);
  const system = systems.systemAt(first);
  for (let at = 0; at < keys.length; at += 1, systems.advance(system)) {
    keys[at] = keyOf(scoreAt(system, alike(system.length), system.length)[0]!, ranking.prefer);
  }
  return Int32Array.from(keys.keys()).sort((one, other) => keys[one]! - keys[other]! || one - other);
}

const equalAmounts: Int32Array[] = [];

/** One part of each element. */
function alike(elements: number): Int32Array {
  equalAmounts[elements] ??= new Int32Array(elements).fill(1);
  return equalAmounts[elements];
}
