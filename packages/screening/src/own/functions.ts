import {
  absolute,
  type Expression,
  exponential,
  greater,
  lesser,
  logarithm,
  squareRoot,
} from '../formula/expression.ts';

/** A function that a formula may call. */
export interface FormulaFunction {
  /** How many values it takes. */
  values: { least: number; most: number };
  /** What its values and its result have for a unit: all the same, any and its root, plain numbers. */
  units: 'kept' | 'root' | 'plain';
  build: (...values: Expression[]) => Expression;
}

const one = { least: 1, most: 1 };
const several = { least: 2, most: 8 };
const folded =
  (of: (left: Expression, right: Expression) => Expression) =>
  (...values: Expression[]) =>
    values.reduce((left, right) => of(left, right));

/** The functions by name. A map, so that 'constructor' is no function. */
export const functions: ReadonlyMap<string, FormulaFunction> = new Map<string, FormulaFunction>([
  ['min', { values: several, units: 'kept', build: folded(lesser) }],
  ['max', { values: several, units: 'kept', build: folded(greater) }],
  ['abs', { values: one, units: 'kept', build: absolute }],
  ['sqrt', { values: one, units: 'root', build: squareRoot }],
  ['exp', { values: one, units: 'plain', build: exponential }],
  ['ln', { values: one, units: 'plain', build: logarithm }],
]);
