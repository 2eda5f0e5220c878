import type { PointBlock } from './pointBlock.ts';

/** A sum over the elements, at the points of blocks. */
export interface Sum {
  /** Turns to another system, whose amounts make a whole of so many parts. */
  enter(system: readonly number[], whole: number): void;
  /** Writes the sum at every point of a block of that system, from `offset` on. */
  fill(block: PointBlock, into: Float64Array, offset: number): void;
}
