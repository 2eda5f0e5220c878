import { expect, test } from 'vitest';
import { bench } from '../bench/bench.ts';
import { preparedFor } from '../bench/compare.ts';
import { differenceOf } from '../bench/digest.ts';
import { compiler } from '../bench/plainLoop.ts';
import { sampledChunks } from '../bench/sampledChunks.ts';
import { tableOf } from '../bench/table.ts';
import { type Workload, workloads } from '../bench/workloads.ts';
import { countPoints } from '../src/index.ts';

const pool = ['Al', 'Co', 'Cr', 'Fe', 'Mn', 'Ni', 'Ti'];
const [six] = workloads;

/** A workload like one of the real ones, on a pool that is scored in no time. */
function small(name: string): Workload {
  const like = workloads.find((one) => one.name === name)!;
  const elements = { pool, require: [], forbid: [] };
  const specification = { ...like.specification, elements, keep: 50 };
  return {
    name,
    specification,
    sample: { oneIn: 1, group: 1 },
    reference: { oneIn: 3, points: 300 },
  };
}

test.each([
  'five-percent-5',
  'five-percent-6',
  'eight-limits',
  'any-tree',
  'own-bounds',
  'full-five-percent-5',
])('on a small pool all sides agree on %s, the plain C loop among them, and are printed', (name) => {
  const said: string[] = [];
  const report = bench(1, (line) => said.push(line), [small(name)]);
  const [comparison] = report.comparisons;
  const plain = comparison!.sides.find(({ side }) => side === 'plain C');
  expect(plain === undefined).toBe(compiler() === null);
  expect(said.at(-1)).toBe(`${name} ...`);
  for (const side of comparison!.sides) expect(side.median).toBeGreaterThan(0);
  expect(tableOf(report)).toContain(`| ${name} |`);
});

test('without a compiler the column of the plain loop is empty', () => {
  const path = process.env.PATH;
  process.env.PATH = '/nowhere';
  try {
    const said: string[] = [];
    const report = bench(1, (line) => said.push(line), [small('five-percent-5')]);
    expect(said[0]).toMatch(/no C compiler/);
    expect(report.comparisons[0]!.sides.map(({ overPlain }) => overPlain)).not.toContain(1);
    expect(tableOf(report)).toContain('none here, so the column is empty');
  } finally {
    process.env.PATH = path;
  }
});

test('digests differ where a count or a kept point does, and not where one side does not count', () => {
  const one = { points: 3, passed: 2, passedEach: [2, 3], ids: '2 a' };
  expect(differenceOf(one, { ...one, passed: null, passedEach: null })).toBeNull();
  expect(differenceOf(one, { ...one, passedEach: [3, 2] })).toBe('passedEach: 2,3 and 3,2');
  expect(differenceOf(one, { ...one, ids: '2 b' })).toBe('ids: 2 a and 2 b');
});

test('the workloads are as large as their names are known for', () => {
  const sizes = Object.fromEntries(
    workloads.map((workload) => {
      const prepared = preparedFor(workload);
      const points = sampledChunks(prepared, workload.sample).reduce((sum, one) => sum + one.points, 0);
      return [workload.name, [countPoints(prepared.grid), Math.round(points / 1e5) / 10]];
    }),
  );
  expect(sizes['five-percent-5']).toEqual([22_496_304n, 22.5]);
  expect(sizes['one-percent-5']).toEqual([8_579_929_104n, 22.1]);
  expect(sizes['five-percent-6']).toEqual([267_095_160n, 22.5]);
  expect(six!.specification.limits).toHaveLength(6);
});
