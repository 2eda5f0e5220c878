import { describe, expect, test } from 'vitest';
import {
  atMost,
  choose,
  column,
  condition,
  constant,
  divide,
  type Expression,
  elementPower,
  elementProduct,
  elementSum,
  entropy,
  exponential,
  greater,
  least,
  linear,
  logarithm,
  minus,
  pairColumn,
  pairs,
  parseUnit,
  plus,
  power,
  productOfTwo,
  quantities,
  sameUnit,
  share,
  squareRoot,
  sumOfTwo,
  times,
  unitOf,
  variance,
  within,
} from '../../src/index.ts';

const has = (formula: Expression, unit: string) => sameUnit(unitOf(formula), parseUnit(unit));

test.for(quantities.map((quantity) => [quantity.id, quantity] as const))(
  'the formula of %s has the unit that it states',
  ([, quantity]) => {
    expect(has(quantity.formula, quantity.unit)).toBe(true);
  },
);

describe('the unit of a formula', () => {
  test('follows products, quotients, powers and roots', () => {
    expect(has(variance('metallicRadius'), 'pm2')).toBe(true);
    expect(has(squareRoot(variance('metallicRadius')), 'pm')).toBe(true);
    expect(has(power(linear('metallicRadius'), 1.5), 'pm')).toBe(false);
    expect(has(linear(elementPower(column('metallicRadius'), 3)), 'pm3')).toBe(true);
    expect(has(pairs(productOfTwo(column('shearModulus'))), 'GPa')).toBe(false);
    expect(has(pairs(sumOfTwo(column('shearModulus'))), 'GPa')).toBe(true);
    expect(has(least(column('meltingTemperature')), 'K')).toBe(true);
    expect(has(times(linear(share('Al')), entropy()), '')).toBe(true);
    expect(
      has(
        divide(linear(elementProduct(column('price'), column('atomicMass'))), linear('atomicMass')),
        'currency/kg',
      ),
    ).toBe(true);
    expect(has(times(condition('strainRate'), constant(2, 's')), '')).toBe(true);
  });

  test('knows scales, not dimensions alone: GPa are not MPa, and a ratio is no percentage', () => {
    expect(has(linear('shearModulus'), 'MPa')).toBe(false);
    expect(has(times(constant(1000, 'MPa/GPa'), linear('shearModulus')), 'MPa')).toBe(true);
    expect(has(divide(linear('density'), linear('density')), '%')).toBe(false);
    expect(has(times(constant(100, '%'), divide(linear('density'), linear('density'))), '%')).toBe(true);
  });

  test('is an error where units are mixed', () => {
    expect(() => unitOf(plus(linear('meltingTemperature'), pairs(pairColumn('mixingEnthalpy'))))).toThrow(
      'add: the units K and',
    );
    expect(() => unitOf(minus(pairs(pairColumn('mixingEnthalpy')), constant(1, 'J/mol')))).toThrow('differ');
    expect(() => unitOf(greater(linear('density'), 1))).toThrow('differ');
    expect(() => unitOf(linear(elementSum(column('density'), column('price'))))).toThrow('differ');
    expect(() => unitOf(within(atMost(linear('density'), 8), entropy()))).toThrow('differ');
    expect(() => unitOf(choose(atMost(entropy(), 1), linear('density'), entropy()))).toThrow('differ');
    expect(() => unitOf(exponential(linear('meltingTemperature')))).toThrow('exponential');
    expect(() => unitOf(logarithm(times(constant(100, '%'), entropy())))).toThrow('logarithm');
  });

  test('may be compared with 0, which has every unit', () => {
    expect(has(greater(0, linear('density')), 'g/cm3')).toBe(true);
    expect(has(within(atMost(0, linear('meltingTemperature')), entropy()), '')).toBe(true);
  });

  test('is an error for a column that does not exist', () => {
    expect(() => unitOf(linear('colour'))).toThrow('There is no column "colour".');
    expect(() => unitOf(pairs(pairColumn('colour')))).toThrow('There is no column "colour".');
  });
});
