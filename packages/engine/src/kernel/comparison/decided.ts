import type { Node } from '../node.ts';
import { ROUNDED, sizeOf } from '../slack.ts';
import type { Relation } from './comparer.ts';
import { always, never, type Test } from './test.ts';

/** A comparison that the ends of the canonical value decide; a point that may lack a value is not passed so. */
export function decided(node: Node, { operator, threshold, width }: Relation): Test | null {
  const { low, high, mayLack } = node;
  if (Number.isNaN(low) || Number.isNaN(high)) return null;
  const rounding = node.operation.kind === 'constant' ? 0 : ROUNDED * sizeOf(node) + Number.MIN_VALUE;
  const [lower, upper] = [threshold - width - rounding, threshold + width + rounding];
  const [holdsAll, holdsNone] = {
    '<': [high < lower, low >= upper],
    '<=': [high <= lower, low > upper],
    '>': [low > upper, high <= lower],
    '>=': [low >= upper, high < lower],
  }[operator];
  if (holdsNone) return never;
  return holdsAll && !mayLack ? always : null;
}
