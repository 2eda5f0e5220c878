import { atomicToWeightPercent, parseAlloy, weightToAtomicPercent } from '@tiegel/elements';
import { valuesOf } from '@tiegel/screening';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { weighingError, weighingSteps, weighingTrust } from '../../src/index.ts';
import { alloys, facts, withValues } from '../fixtures/alloys.ts';

const cantor = parseAlloy('CoCrFeMnNi');
const metals = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Ti', 'V', 'Zr'];

// 10 g of NiAl on a balance of 0.1 g; VEC = 3 + 7 x_Ni at the two outer corners.
test('the interval of a mean, by hand', () => {
  const [nickel, aluminium] = [58.6934, 26.9815385];
  const mass = (10 * nickel) / (nickel + aluminium);
  const shareOf = (ofNickel: number, ofAluminium: number) =>
    ofNickel / nickel / (ofNickel / nickel + ofAluminium / aluminium);
  const found = weighingError(parseAlloy('AlNi'), { mass: 10, resolution: 0.1, facts });
  const { value, least, greatest, mayLack } = found.quantities.valenceElectronConcentration!;
  expect(value).toBe(6.5);
  expect(least).toBeCloseTo(3 + 7 * shareOf(mass - 0.1, 10 - mass + 0.1), 12);
  expect(greatest).toBeCloseTo(3 + 7 * shareOf(mass + 0.1, 10 - mass - 0.1), 12);
  expect(mayLack).toBe(false);
  expect(found.shares.Ni!.greatest).toBeCloseTo(100 * shareOf(mass + 0.1, 10 - mass - 0.1), 10);
  expect(found.shares.Ni!.value).toBe(50);
});

test('each corner is a step, for its values as for what it turns, and the end is the same', () => {
  const question = {
    ...{ mass: 50, resolution: 0.001, facts },
    limits: [{ quantity: 'density', max: 20 }],
    verdicts: { always: () => true },
  };
  const steps = weighingSteps(cantor, question);
  let count = 0;
  for (;;) {
    const { done, value } = steps.next();
    if (done) {
      expect(value).toEqual(weighingError(cantor, question));
      break;
    }
    count += 1;
  }
  // 2⁵ corners, for the quantities, the limit and the verdict.
  expect(count).toBe(3 * 32);
});

test('no weighing within a step leaves the intervals', () => {
  const offsets = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(alloys(metals, { least: 2, most: 5 }), offsets, (alloy, off) => {
      const [mass, resolution] = [100, 0.01];
      const { quantities } = weighingError(alloy, { mass, resolution, facts });
      const weights = Object.entries(atomicToWeightPercent(alloy));
      const weighed = weights.map(([symbol, percent], at) => [
        symbol,
        (percent * mass) / 100 + resolution * off[at]!,
      ]);
      const values = valuesOf(weightToAtomicPercent(Object.fromEntries(weighed)), facts);
      for (const [id, { value, least, greatest, mayLack }] of Object.entries(quantities)) {
        if (value === null) continue;
        // On the edge of a domain (5 at.% aluminium) a weighing within the step has no value.
        if (values[id] === null) {
          expect(mayLack, id).toBe(true);
          continue;
        }
        // The square of the relative error of a mass (0.01 g in some 2 g) is what an extreme inside may be short by.
        const short = 1e-4 * Math.max(1, Math.abs(value));
        expect(values[id]!, id).toBeGreaterThanOrEqual(least! - short);
        expect(values[id]!, id).toBeLessThanOrEqual(greatest! + short);
      }
    }),
    { numRuns: 40 },
  );
});

test('a better balance gives narrower intervals, a thousandth of the step a thousandth of the width', () => {
  const width = (resolution: number) => {
    const { least, greatest } = weighingError(cantor, { mass: 50, resolution, facts }).quantities.density!;
    return greatest! - least!;
  };
  expect(width(0.01) / width(0.00001)).toBeCloseTo(1000, 1);
});

describe('a limit', () => {
  const density = valuesOf(cantor, facts, ['density']).density!;
  const verdictOn = (max: number) =>
    weighingError(cantor, { mass: 50, resolution: 0.01, facts, limits: [{ quantity: 'density', max }] })
      .limits[0]!;

  test('near the value can flip, from either side', () => {
    expect(verdictOn(density + 1e-5)).toMatchObject({ passes: true, canFlip: true });
    expect(verdictOn(density - 1e-5)).toMatchObject({ passes: false, canFlip: true });
  });

  test('far from it cannot', () => {
    expect(verdictOn(density + 0.1)).toMatchObject({ passes: true, canFlip: false });
    expect(verdictOn(density - 0.1)).toMatchObject({ passes: false, canFlip: false });
  });

  test('on a value that lacks says nothing', () => {
    const unknown = withValues('density', { Co: null });
    const found = weighingError(cantor, {
      mass: 50,
      resolution: 0.01,
      facts: unknown,
      limits: [{ quantity: 'density', max: 9 }],
    });
    expect(found.limits[0]).toMatchObject({ passes: null, canFlip: false });
    expect(found.quantities.density).toEqual({ value: null, least: null, greatest: null, mayLack: false });
  });
});

test('a criterion is asked at every corner', () => {
  const found = weighingError(cantor, {
    mass: 50,
    resolution: 0.01,
    facts,
    quantities: ['density'],
    verdicts: {
      fifthOfManganese: (composition) => composition.Mn! >= 20,
      always: () => true,
      never: () => null,
    },
  });
  expect(found.verdicts).toEqual({
    fifthOfManganese: { passes: true, canFlip: true },
    always: { passes: true, canFlip: false },
    never: { passes: null, canFlip: false },
  });
  expect(Object.keys(found.quantities)).toEqual(['density']);
  expect(found.trust).toBe(weighingTrust);
});

test('where some outcomes have no value it says so', () => {
  // 2 mg of carbon, which has no melting temperature, on a balance that shows 10 mg: it may be left out.
  const trace = { Fe: 99.9, C: 0.1 };
  const found = weighingError(trace, {
    mass: 10,
    resolution: 0.01,
    facts,
    quantities: ['meltingTemperature'],
  });
  const { value, mayLack } = found.quantities.meltingTemperature!;
  expect(value).toBeNull();
  expect(mayLack).toBe(true);
});
