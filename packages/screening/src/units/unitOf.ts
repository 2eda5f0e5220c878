import { columns, pairColumns, priceColumn } from '@tiegel/elements';
import { conditionNamed } from '../formula/conditions.ts';
import type { BinaryKind, ElementTerm, Expression, PairTerm } from '../formula/expression.ts';
import { isBinary, isUnary } from '../formula/nodeKinds.ts';
import { parseUnit } from './parseUnit.ts';
import { formatUnit, multiplyUnits, PLAIN_NUMBER, raiseUnit, sameUnit, type Unit } from './unit.ts';

const elementColumnUnits = new Map<string, string>(
  [...columns, priceColumn].map(({ id, unit }) => [id, unit]),
);
const pairColumnUnits = new Map<string, string>(pairColumns.map(({ id, unit }) => [id, unit]));

/**
 * The unit of a formula, dimension and scale, derived from the units of its columns, constants and
 * conditions. A constant that converts names what it converts: 1000 J/kJ turns kJ into J, 100 %
 * turns a ratio into per cent. The plain number 0 has every unit.
 * @throws Error where numbers of different units are added or compared, and where a logarithm or
 *   exponential is taken of anything but a plain number
 */
export function unitOf(expression: Expression): Unit {
  if (isBinary(expression)) return binaryUnit(expression.kind, expression.left, expression.right);
  if (isUnary(expression)) {
    const of = unitOf(expression.of);
    if (expression.kind === 'squareRoot') return raiseUnit(of, 0.5);
    if (expression.kind === 'negate' || expression.kind === 'absolute') return of;
    return common(of, PLAIN_NUMBER, expression.kind);
  }
  switch (expression.kind) {
    case 'constant':
      return parseUnit(expression.unit);
    case 'condition':
      return parseUnit(conditionNamed(expression.name).unit);
    case 'entropy':
      return PLAIN_NUMBER;
    case 'linear':
    case 'least':
    case 'greatest':
      return elementTermUnit(expression.of);
    case 'pairs':
    case 'leastPair':
    case 'greatestPair':
      return pairTermUnit(expression.of);
    case 'power':
      return raiseUnit(unitOf(expression.of), expression.exponent);
    case 'choose': {
      const { when, then, otherwise } = expression;
      commonOf(when.left, when.right, when.operator);
      return otherwise ? commonOf(then, otherwise, 'choose') : unitOf(then);
    }
  }
}

function binaryUnit(kind: BinaryKind, left: Expression, right: Expression): Unit {
  if (kind === 'multiply') return multiplyUnits(unitOf(left), unitOf(right));
  if (kind === 'divide') return multiplyUnits(unitOf(left), raiseUnit(unitOf(right), -1));
  return commonOf(left, right, kind);
}

function elementTermUnit(term: ElementTerm): Unit {
  switch (term.kind) {
    case 'column':
      return columnUnit(elementColumnUnits, term.column);
    case 'share':
      return PLAIN_NUMBER;
    case 'constant':
      return parseUnit(term.unit);
    case 'add':
      return common(elementTermUnit(term.left), elementTermUnit(term.right), term.kind);
    case 'multiply':
      return multiplyUnits(elementTermUnit(term.left), elementTermUnit(term.right));
    case 'divide':
      return multiplyUnits(elementTermUnit(term.left), raiseUnit(elementTermUnit(term.right), -1));
    case 'power':
      return raiseUnit(elementTermUnit(term.of), term.exponent);
  }
}

function pairTermUnit(term: PairTerm): Unit {
  switch (term.kind) {
    case 'pairColumn':
      return columnUnit(pairColumnUnits, term.column);
    case 'constant':
      return parseUnit(term.unit);
    case 'sum':
      return elementTermUnit(term.of);
    case 'squaredDifference':
    case 'product':
      return raiseUnit(elementTermUnit(term.of), 2);
    case 'add':
      return common(pairTermUnit(term.left), pairTermUnit(term.right), term.kind);
    case 'multiply':
      return multiplyUnits(pairTermUnit(term.left), pairTermUnit(term.right));
  }
}

function columnUnit(units: ReadonlyMap<string, string>, column: string): Unit {
  const unit = units.get(column);
  if (unit === undefined) throw new Error(`There is no column "${column}".`);
  return parseUnit(unit);
}

function commonOf(left: Expression, right: Expression, operator: string): Unit {
  if (isPlainZero(left)) return unitOf(right);
  if (isPlainZero(right)) return unitOf(left);
  return common(unitOf(left), unitOf(right), operator);
}

function isPlainZero(expression: Expression): boolean {
  return expression.kind === 'constant' && expression.value === 0 && expression.unit === '';
}

function common(left: Unit, right: Unit, operator: string): Unit {
  if (sameUnit(left, right)) return left;
  throw new Error(`${operator}: the units ${formatUnit(left)} and ${formatUnit(right)} differ.`);
}
