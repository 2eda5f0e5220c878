import { pairEnthalpy } from '@tiegel/elements';
import { expect, test } from 'vitest';

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817, kJ/mol of atoms. Typed from memory, not from the
// file that the data were read from; whole numbers as printed there.
const printed: [string, string, number][] = [
  ['Al', 'Ni', -22],
  ['Al', 'Co', -19],
  ['Al', 'Cr', -10],
  ['Co', 'Cr', -4],
  ['Cr', 'Ni', -7],
  ['Cu', 'Fe', 13],
  ['Cu', 'Ni', 4],
  ['Fe', 'Mn', 0],
  ['Ni', 'Zr', -49],
  ['Ni', 'Ti', -35],
  ['Cu', 'Zr', -23],
  ['Nb', 'Ti', 2],
  ['Mo', 'Ta', -5],
  ['Ta', 'W', -7],
];

test.for(printed)('%s and %s mix with %d kJ/mol, in either order', ([a, b, enthalpy]) => {
  expect(pairEnthalpy(a, b)).toBe(enthalpy);
  expect(pairEnthalpy(b, a)).toBe(enthalpy);
});
