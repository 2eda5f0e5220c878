import { parseAlloy } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import { compounds, compoundsTrust } from '../../src/index.ts';
import { facts, withoutPair, withValues } from '../fixtures/alloys.ts';

const of = (alloy: string, annealTemperature?: number) =>
  compounds(parseAlloy(alloy), facts, annealTemperature === undefined ? {} : { annealTemperature })!;

// ΔH −22 kJ/mol (Takeuchi & Inoue), ΔS = R ln 2, compound −48.269 kJ/mol.
test('equimolar AlNi: the solution against the compound', () => {
  const { hullDistance, solutionFreeEnergy, competing, temperature } = of('AlNi', 1000);
  expect(temperature).toBe(1000);
  expect(solutionFreeEnergy).toBeCloseTo(-22 - 8.314462618 * Math.log(2), 10);
  expect(hullDistance).toBeCloseTo(-22 - 8.314462618 * Math.log(2) + 48.269, 3);
  expect(competing).toEqual([{ formula: 'AlNi', fraction: 1 }]);
});

// −109 kJ/mol of the liquid counts carbon as a metal; 180 kJ/mol make it one, in the compound too.
test('titanium carbide beats its solution: both count carbon from graphite', () => {
  expect(of('CTi', 1000).hullDistance).toBeCloseTo(-109 + 90 - 8.314462618 * Math.log(2) + 76.9585, 3);
});

test('a pure element competes with nothing, one that is no metal either', () => {
  for (const element of ['Si', 'B', 'C', 'Ni']) {
    expect(of(element)).toMatchObject({ hullDistance: 0, solutionFreeEnergy: 0 });
    expect(of(element).words).toBe(`At 1273 K nothing competes with pure ${element}.`);
  }
});

test('every kelvin lowers the solution by its entropy', () => {
  const [cold, hot] = [of('CoCrFeMnNi', 500), of('CoCrFeMnNi', 1500)];
  expect(cold.hullDistance - hot.hullDistance).toBeCloseTo(8.314462618 * Math.log(5), 10);
  expect(hot.competing).toEqual(cold.competing);
});

test('at 1273.15 K unless another temperature is given', () => {
  expect(of('CoCrFeMnNi').temperature).toBe(1273.15);
});

describe('in words', () => {
  test('a difference within the error of the model decides nothing', () => {
    expect(of('AlCoCrFeNi').words).toBe(
      'At 1273 K the random solution lies 4.5 kJ/mol below its strongest competitor, 40 % CrFe + 30 % AlCo2 + 30 % AlNi2 (shares of the atoms): within the error of the model, 10 kJ/mol, so undecided.',
    );
  });

  test('a larger one does, either way', () => {
    expect(of('AlNi').words).toMatch(/above its strongest competitor, AlNi: compounds would form\.$/);
    expect(of('CoCrFeNi').words).toMatch(
      /below its strongest competitor, .*: no compound would form, though it may still separate into two solutions\.$/,
    );
    // Silver and iron have no compound: what competes is the two of them.
    expect(of('AgFe').words).toMatch(/50 % Ag \+ 50 % Fe .*: it would separate into its elements\.$/);
  });

  // By the temperature, through the entropy, the distance is brought as near to the error as one likes.
  test('where the verdict turns, the number tells why', () => {
    const at = (distance: number) => {
      const [cold, hot] = [of('CoCrFeNi', 1000), of('CoCrFeNi', 2000)];
      const slope = (hot.hullDistance - cold.hullDistance) / 1000;
      return of('CoCrFeNi', 1000 + (distance - cold.hullDistance) / slope).words;
    };
    expect(at(-9.97)).toMatch(/lies 9\.97 kJ\/mol below .*undecided\.$/);
    expect(at(-10.02)).toMatch(/lies 10\.02 kJ\/mol below .*no compound would form/);
    expect(at(-9.6)).toMatch(/lies 9\.6 kJ\/mol below .*undecided\.$/);
  });

  test('nothing competes with a pure element', () => {
    expect(of('Ni')).toMatchObject({ hullDistance: 0, words: 'At 1273 K nothing competes with pure Ni.' });
  });

  test('every answer says how large the error of the model is', () => {
    expect(of('AlNi').trust).toBe(compoundsTrust);
    expect(compoundsTrust).toContain('10 kJ/mol');
  });
});

test('a pair or a parameter that lacks leaves no answer', () => {
  expect(compounds(parseAlloy('AlNi'), withoutPair('Al', 'Ni'))).toBeNull();
  for (const column of ['miedemaPotential', 'miedemaTransformation']) {
    expect(compounds(parseAlloy('AlNi'), withValues(column, { Al: null })), column).toBeNull();
  }
});
