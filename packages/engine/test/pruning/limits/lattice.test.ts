import { factsFor } from '@tiegel/elements';
import { bind, quantityById } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { latticeOf } from '../../../src/pruning/limits/lattice.ts';

const facts = factsFor(['Al', 'Co', 'Fe', 'Ni']);
const latticeFor = (id: string) => {
  const program = bind([quantityById(id).formula], facts);
  return latticeOf(program.steps[program.outputs[0]!]!);
};

test('a mean of whole numbers over 20 parts is a multiple of a twentieth', () => {
  // Valence electrons 3, 9, 8, 10.
  const lattice = latticeFor('valenceElectronConcentration')!;
  expect(lattice.atMost(8.6 + 1e-11, 20)).toBe(8.6);
  expect(lattice.atMost(8.64, 20)).toBe(8.6);
  expect(lattice.atLeast(8.61, 20)).toBe(8.65);
  expect(lattice.atLeast(8.65, 20)).toBe(8.65);
});

test('a pair sum of whole enthalpies is a multiple of four over the square of the parts', () => {
  const lattice = latticeFor('mixingEnthalpy')!;
  expect(lattice.atMost(-14.9999, 10)).toBe(-15);
  expect(lattice.atLeast(-15 - 1e-12, 10)).toBeCloseTo(-15, 12);
});

test('a side that is open stays open, and a formula that is no sum has no lattice', () => {
  const lattice = latticeFor('valenceElectronConcentration')!;
  expect(lattice.atMost(Number.MAX_VALUE, 20)).toBe(Number.MAX_VALUE);
  expect(lattice.atLeast(-Number.MAX_VALUE, 20)).toBe(-Number.MAX_VALUE);
  expect(latticeFor('density')).toBeNull();
});
