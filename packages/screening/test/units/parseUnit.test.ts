import { expect, test } from 'vitest';
import { formatUnit, parseUnit, sameUnit } from '../../src/index.ts';

// Equalities by the definitions of the units (SI brochure, 9th edition).
test.for([
  ['J/(mol K)', 'kJ/(mol K)', 1000],
  ['GPa', 'MPa', 1e-3],
  ['kg/L', 'g/cm3', 1],
  ['currency/L', 'currency kg/(kg L)', 1],
  ['Pa m3', 'J', 1],
  ['%', '', 100],
  ['at.%', '%', 1],
  ['1/s', 's2/s3', 1],
] as const)('%s is %s, but for the factor', ([left, right, factor]) => {
  const [one, other] = [parseUnit(left), parseUnit(right)];
  expect(sameUnit({ ...one, scale: one.scale * factor }, other)).toBe(true);
  if (factor !== 1) expect(sameUnit(one, other)).toBe(false);
});

test('a unit is written in base units for messages', () => {
  expect(formatUnit(parseUnit('kJ/mol'))).toBe('1000 kg m^2 s^-2 mol^-1');
  expect(formatUnit(parseUnit(''))).toBe('1');
  expect(formatUnit(parseUnit('K'))).toBe('K');
});

test('what cannot be read is named', () => {
  expect(() => parseUnit('furlong')).toThrow('"furlong"');
  expect(() => parseUnit('J/(mol K')).toThrow('closing bracket');
  expect(() => parseUnit('J)')).toThrow('a bracket too many');
});
