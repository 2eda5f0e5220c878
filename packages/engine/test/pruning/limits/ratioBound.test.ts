import { factsFor, withOwnColumn } from '@tiegel/elements';
import { evaluator } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { prepare } from '../../../src/index.ts';
import { kernelTask } from '../../../src/kernel/kernelTask.ts';
import { tightBox } from '../../../src/pruning/boxes/box.ts';
import { ratioBound } from '../../../src/pruning/limits/ratioBound.ts';
import { planOf } from '../../fixtures/plans.ts';
import { specificationWith } from '../../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'];
const total = 1000;

/** Found by climbing towards more rounds: from the middle of the box to the least ratio it takes ten. */
const above = [-2.07597, -1.249602e-5, -3.3804e-3, -1.575475, -1.0414537, -1.130214e-2, -2.4952647e-4];
above.push(-9.2822732e-2, -3.1563580195e-2, -1.125382158);
const below = [8.1872810603e-2, 1.4906776275, 3.71551663e-8, 0.165137924345, 2.38369028507e-2, 1.12998949e-6];
below.push(2.85e-18, 3.006e-25, 1.49420237e-11, 2.990973683e-2);
const most = [261, 224, 75, 455, 371, 53, 929, 725, 136, 225];

test('a ratio that needs more rounds than are made is bounded all the same', () => {
  const specification = specificationWith({
    elements: { pool, require: [], forbid: [] },
    components: { min: 10, max: 10 },
    fractions: {
      ...{ step: 0.1, min: 0.1, max: 100 },
      each: Object.fromEntries(pool.map((symbol, at) => [symbol, { max: most[at]! / 10 }])),
    },
    lets: { ratio: 'above/below' },
    rank: [{ quantity: 'ratio', prefer: 'low' }],
    tally: 'none',
  });
  const columns = Object.entries({ above, below }).map(([id, values]) => ({
    ...{ id, name: id, unit: '', mixing: 'mole' as const },
    values: Object.fromEntries(pool.map((symbol, at) => [symbol, values[at]!])),
  }));
  const plan = planOf(specification, columns.reduce(withOwnColumn, factsFor(pool)));
  const prepared = prepare({ ...plan, columns: columns.map(({ values, ...column }) => column) });
  const bound = ratioBound(kernelTask(prepared)!, pool.length)!;
  const members = pool.map((_, at) => at);
  const box = tightBox(new Array(10).fill(1), most, total)!;
  bound.enter(members);
  const key = bound.bestKey(box);

  const value = new Float64Array(prepared.program.outputs.length);
  const { evaluate } = evaluator(prepared.program);
  const ratioAt = (parts: readonly number[]): number => {
    evaluate(members, parts, total, value);
    return value[prepared.scoreOutput]!;
  };
  /** The point of the box where above − ratio · below is least. */
  function leastFor(ratio: number): number[] {
    const parts = box.low.slice();
    let left = total - parts.reduce((sum, one) => sum + one, 0);
    const gain = (at: number) => above[at]! - ratio * below[at]!;
    for (const at of members.toSorted((one, other) => gain(one) - gain(other))) {
      const given = Math.min(left, box.high[at]! - parts[at]!);
      parts[at]! += given;
      left -= given;
    }
    return parts;
  }
  let least = 0;
  for (let round = 0; round < 30; round += 1) least = Math.min(least, ratioAt(leastFor(least)));
  expect(key).toBeLessThanOrEqual(least);
  expect(key).toBeGreaterThan(1.1 * least);
});
