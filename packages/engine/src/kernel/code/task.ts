import type { Test } from '../comparison/test.ts';
import type { Tests } from '../comparison/testsOf.ts';
import type { Node } from '../node.ts';
import type { Reach } from '../reach.ts';
import type { Unrooted } from '../unrooted.ts';

/** What a kernel decides at each point. */
export interface KernelTask {
  /** Each is counted, and the points that meet all of them. */
  limits: readonly Test[];
  /** Tests that are counted beside: whether limited quantities have a value. */
  counted: readonly Test[];
  /** What the points that meet all limits are ranked by; null where none is kept. */
  score: Node | null;
  /** A power of the score that is compared with the cut-off in its place; null: the score itself is. */
  raised: Unrooted | null;
  prefer: 'high' | 'low';
  /** What a point must meet for its score to reach the cut-off. */
  reaches: readonly Reach[];
  tests: Tests;
  /**
   * So many linear functions of the parts, given as data, must be at most 0 at points that are
   * wanted: each line is cut to where they are, and what lies beyond is not counted.
   */
  conditions?: number;
  /**
   * Only the best are wanted. Nothing is counted, and of most points nothing is formed but what the cut-off and
   * the limits that are forms need to rule them out.
   */
  countsNothing?: boolean;
  /** Parts that make the whole. */
  total: number;
}

/** What a kernel counts: points that meet each limit and each counted test, and all limits together. */
export function countersOf({ limits, counted, countsNothing }: KernelTask): number {
  return countsNothing ? 0 : limits.length + counted.length + 1;
}

/** What is compared with the cut-off. */
export const comparedIn = ({ score, raised }: KernelTask): Node | null => raised?.node ?? score;
