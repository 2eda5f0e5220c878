import { factsFor, parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { strengthCurve, stretches } from '../../src/alloy/strength/strengthCurve.ts';

// Worked values of this project (own calculation by an independent script): CoCrFeMnNi 92.16 MPa at 293 K and
// 10.36 MPa at 1273 K as fcc; the curve has points at 300 and 1280 K.
test('the curve passes the worked values', () => {
  const alloy = parseAlloy('CoCrFeMnNi');
  const { fcc } = strengthCurve(alloy, factsFor(Object.keys(alloy)), {});
  const at = (kelvin: number) => fcc.find(({ temperature }) => temperature === kelvin)!.value!;
  expect(at(280)).toBeGreaterThan(92.16);
  expect(at(300)).toBeLessThan(92.16);
  expect(at(1260)).toBeGreaterThan(10.36);
  expect(at(1280)).toBeLessThan(10.36);
  expect(fcc[0]!.temperature).toBe(77);
});

const point = (temperature: number, value: number | null, domain: 'inside' | 'outside' = 'inside') => ({
  ...{ temperature, value, domain },
  error: null,
  reason: null,
});

test('a missing value is a gap, a change of domain is none', () => {
  const points = [point(1, 5), point(2, 5, 'outside'), point(3, null), point(4, 5, 'outside')];
  const found = stretches(points, ({ domain }) => domain);
  expect(found.map(({ kind, points: of }) => [kind, of.map(({ temperature }) => temperature)])).toEqual([
    ['inside', [1]],
    ['outside', [1, 2]],
    ['outside', [4]],
  ]);
});
