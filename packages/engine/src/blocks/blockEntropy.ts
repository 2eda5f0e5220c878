import { entropyTerm } from '@tiegel/screening';
import type { PointBlock } from './pointBlock.ts';

/** Forms a block's entropies from a table of c ln c over the parts of a whole. */
export function blockEntropy(capacity: number): (block: PointBlock, whole: number) => void {
  const tables = new Map<number, Float64Array>();
  const scratch = [new Float64Array(capacity), new Float64Array(capacity)] as const;
  const nothing = new Float64Array(1);

  function tableOf(whole: number): Float64Array {
    let table = tables.get(whole);
    if (!table) {
      table = Float64Array.from({ length: whole + 1 }, (_, parts) => entropyTerm(parts / whole));
      tables.set(whole, table);
    }
    return table;
  }

  return ({ count, levels, last, entropy }, whole) => {
    const table = tableOf(whole);
    let before: Float64Array = nothing;
    for (const [index, level] of levels.entries()) {
      const sums = scratch[index % 2 === 0 ? 0 : 1];
      const { parent, parts } = level;
      for (let at = 0; at < level.count; at += 1) sums[at] = before[parent[at]!]! - table[parts[at]!]!;
      before = sums;
    }
    for (let at = 0; at < count; at += 1) entropy[at] = before[at]! - table[last[at]!]!;
  };
}
