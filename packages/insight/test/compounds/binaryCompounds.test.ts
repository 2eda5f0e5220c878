import { expect, test } from 'vitest';
import { compoundsAmong } from '../../src/compounds/binaryCompounds.ts';
import { binaryCompounds, formationEnthalpy, miedemaParameters } from '../../src/index.ts';
import { facts, withValues } from '../fixtures/alloys.ts';

test('five stoichiometries, symbols alphabetical whichever is named first', () => {
  const compounds = binaryCompounds('Ni', 'Al', facts)!;
  expect(compounds.map(({ formula }) => formula)).toEqual(['Al3Ni', 'Al2Ni', 'AlNi', 'AlNi2', 'AlNi3']);
  expect(compounds.map(({ fractions }) => fractions[0])).toEqual([0.75, 2 / 3, 0.5, 1 / 3, 0.25]);
  expect(binaryCompounds('Al', 'Ni', facts)).toBe(compounds);
});

test('their enthalpies are those of the model', () => {
  const [nickel, aluminium] = [miedemaParameters('Ni', facts)!, miedemaParameters('Al', facts)!];
  const trinickel = binaryCompounds('Al', 'Ni', facts)!.at(-1)!;
  expect(trinickel.enthalpy).toBeCloseTo(formationEnthalpy(nickel, aluminium, 0.75, 'compound'), 10);
});

test('a system has five for each pair, none if a parameter lacks', () => {
  expect(compoundsAmong(['Al', 'Co', 'Cr', 'Ni'], facts)).toHaveLength(30);
  expect(compoundsAmong(['Al'], facts)).toEqual([]);
  expect(compoundsAmong(['Al', 'Co'], withValues('miedemaPotential', { Co: null }))).toBeNull();
});

test('other facts have compounds of their own', () => {
  const other = withValues('miedemaPotential', { Al: 4 });
  expect(binaryCompounds('Al', 'Ni', other)![0]!.enthalpy).not.toBe(
    binaryCompounds('Al', 'Ni', facts)![0]!.enthalpy,
  );
});
