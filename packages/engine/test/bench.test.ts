import { expect, test } from 'vitest';
import { bench } from '../bench/bench.ts';
import { tableOf } from '../bench/table.ts';
import { preparedFor, systemsOf, workloads } from '../bench/workloads.ts';
import { countPoints } from '../src/index.ts';
import { specificationWith } from './fixtures/specifications.ts';

test('a small workload is compared, measured on both sides and printed with the machine', () => {
  const small = {
    name: 'small',
    specification: specificationWith({
      components: { min: 4, max: 5 },
      fractions: { step: 2, min: 2, max: 100, each: {} },
    }),
    oneIn: 1,
    reference: { oneIn: 1, points: 3000 },
  };
  const said: string[] = [];
  const report = bench(2, (line) => said.push(line), [small]);
  const [comparison] = report.comparisons;
  expect(said).toHaveLength(1);
  // C(5,4)·C(49,3) + C(49,4) points on the fast side, six systems on the other
  expect([comparison!.fast.points, comparison!.reference.points]).toEqual([303_996, 18_000]);
  expect(comparison!.ratio).toBeGreaterThan(0);
  expect(tableOf(report)).toContain('| small |');
});

test('the workloads are as large as their names are known for', () => {
  const points = workloads.map((workload) => {
    const prepared = preparedFor(workload);
    return [
      countPoints(prepared.grid),
      systemsOf(prepared, workload.oneIn).reduce((sum, one) => sum + one.points, 0),
    ];
  });
  expect(points.map(([whole]) => whole)).toEqual([22_496_304n, 8_579_929_104n, 267_095_160n]);
  expect(points.map(([, measured]) => Math.round(Number(measured) / 1e5) / 10)).toEqual([22.5, 22.1, 22.3]);
});
