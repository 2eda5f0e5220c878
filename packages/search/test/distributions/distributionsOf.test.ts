import { ProblemError } from '@tiegel/contract';
import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { distributionsOf } from '../../src/distributions/distributionsOf.ts';
import { shareError } from '../../src/distributions/shareError.ts';
import { answer, question } from '../fixtures/questions.ts';

const ask = (request: unknown, maxPoints = 1e13) =>
  distributionsOf(request, { prices: demoPrices }, maxPoints);

function faultsOf(request: unknown): { code: string; pointer: string }[] {
  try {
    ask(request);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => ({ code, pointer }));
    throw error;
  }
  return [];
}

test('a grid that is not larger than the sample is counted whole, as by the search itself', () => {
  const specification = question();
  const { counts } = answer(specification);
  const found = ask({ specification, sample: 20_000 });
  expect(found).toMatchObject({ systems: counts.systems, points: counts.points, sample: counts.points });
  expect(found.limits.map(({ share }) => Math.round(share * counts.points))).toEqual(counts.passedEach);
  expect(Math.round(found.passed * counts.points)).toBe(counts.passed);
  expect(found.error).toBe(0);
  // Of two limits each leaves, without the other, what it leaves alone.
  const [first, second] = found.limits;
  expect([first!.shareWithout, second!.shareWithout]).toEqual([second!.share, first!.share]);
});

test('shares can be counted again from the values, and lie within the error of the whole', () => {
  const specification = question({ fractions: { step: 2.5, min: 2.5, max: 35 } });
  const { counts } = answer(specification);
  const found = ask({ specification, sample: 2000, seed: 5 });
  expect(found).toMatchObject({ sample: 2000, seed: 5, points: counts.points });
  const valuesOf = (id: string) => found.quantities.find(({ quantity }) => quantity === id)!.values;
  const enthalpies = valuesOf('mixingEnthalpy');
  const electrons = valuesOf('valenceElectronConcentration');
  const meets = enthalpies.map((one, at) => [one! >= -20 && one! <= 5, electrons[at]! >= 6]);
  const share = (met: (boolean | undefined)[]) => met.filter(Boolean).length / 2000;
  expect(found.limits[0]!.share).toBe(share(meets.map(([first]) => first)));
  expect(found.limits[0]!.shareWithout).toBe(share(meets.map(([, second]) => second)));
  expect(found.passed).toBe(share(meets.map(([first, second]) => first && second)));
  expect(Math.abs(found.passed - counts.passed! / counts.points)).toBeLessThan(2 * found.error);
});

test('nothing need be ranked, and quantities and compositions can be asked for', () => {
  const { rank: _, ...specification } = question() as Record<string, unknown>;
  const found = ask({ specification, quantities: ['density', 'cost'], sample: 30, compositions: true });
  expect(found.quantities.map(({ quantity }) => quantity)).toEqual(['density', 'cost']);
  expect(ask({ specification }).quantities.map(({ quantity }) => quantity)).toEqual([
    'mixingEnthalpy',
    'valenceElectronConcentration',
  ]);
  expect(found.compositions).toHaveLength(30);
  for (const composition of found.compositions!) {
    expect(Object.keys(composition)).toHaveLength(4);
    expect(composition.Ni).toBeGreaterThanOrEqual(5);
    expect(Object.values(composition).reduce((sum, one) => sum + one)).toBeCloseTo(100, 9);
  }
  expect(ask({ specification })).not.toHaveProperty('compositions');
});

test('a limit that no point can meet leaves nothing, and is no fault here', () => {
  const specification = question({ limits: [{ quantity: 'density', max: 0.1 }] });
  expect(ask({ specification })).toMatchObject({ passed: 0, limits: [{ share: 0, shareWithout: 1 }] });
});

test('faults lie where they are in the question, and all are told', () => {
  expect(faultsOf({ specification: question({ components: 0, keep: -1 }) })).toEqual([
    { code: 'request/out-of-range', pointer: '/specification/components' },
    { code: 'request/out-of-range', pointer: '/specification/keep' },
  ]);
  expect(faultsOf({ specification: question(), quantities: ['densty', 'density', 'no'] })).toEqual([
    { code: 'quantity/unknown', pointer: '/quantities/0' },
    { code: 'quantity/unknown', pointer: '/quantities/2' },
  ]);
  expect(faultsOf({ specification: question(), sample: 0, more: 1 }).map(({ pointer }) => pointer)).toEqual([
    '/sample',
    '/more',
  ]);
  expect(faultsOf(null)).toMatchObject([{ pointer: '' }]);
  expect(faultsOf({ specification: question({ fractions: { step: 5, min: 5, max: 10 } }) })).toEqual([
    { code: 'search/no-points', pointer: '/specification/fractions' },
  ]);
});

// Wilson's interval for 0 of 10 at 95 % ends at 0.2775: Agresti & Coull, Am. Stat. 52 (1998) 119
// give 1.96²/(10 + 1.96²) as its form (from memory).
test('the error of a share that was never met is not nothing', () => {
  expect(shareError(0, 10)).toBeCloseTo(0.2775, 4);
  expect(shareError(1, 10)).toBeCloseTo(0.2775, 4);
  // For a large sample the normal interval: 1.96 √(0.5·0.5/10000).
  expect(shareError(0.5, 10_000)).toBeCloseTo(0.0098, 4);
});
