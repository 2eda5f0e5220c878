import { problem } from '@tiegel/contract/terms';
import type { Quantity } from '../definition/quantity.ts';
import {
  constant,
  divide,
  type Expression,
  minus,
  negate,
  plus,
  power,
  times,
} from '../formula/expression.ts';
import { fold } from '../formula/fold.ts';
import {
  commonUnit,
  isPlain,
  type PartUnit,
  plain,
  productUnit,
  quotientUnit,
  raisedUnit,
  unitInWords,
  writtenUnit,
} from '../units/writtenUnit.ts';
import { type FormulaNode, namesIn, type Operator } from './formulaNode.ts';
import { functions } from './functions.ts';
import { partText } from './partText.ts';

/** What a part of a formula means: how it is computed, and in which unit. */
export interface Meaning {
  expression: Expression;
  unit: PartUnit;
}

/** A text whose names are all known, and where its faults are told. */
export interface Written {
  text: string;
  quantities: ReadonlyMap<string, Quantity>;
  pointer: string;
}

/**
 * The meaning of a formula of which every name is known.
 * @throws ProblemError expression/units, expression/not-plain, expression/exponent,
 *   expression/no-value: the first one
 */
export function meaningOf(node: FormulaNode, written: Written): Meaning {
  const found = meaningByKind(node, written);
  if (namesIn(node).length > 0) return found;
  const value = fold(found.expression, {});
  if (value.kind === 'constant' && Number.isFinite(value.value)) return { ...found, expression: value };
  throw fault('expression/no-value', node, written, { part: partText(written.text, node) });
}

function meaningByKind(node: FormulaNode, written: Written): Meaning {
  switch (node.kind) {
    case 'number':
      return { expression: constant(node.value), unit: 'any' };
    case 'name': {
      const { formula, unit, unitInFormulas } = written.quantities.get(node.name)!;
      return { expression: formula, unit: unitInFormulas ?? writtenUnit(unit) };
    }
    case 'negate': {
      const { expression, unit } = meaningOf(node.of, written);
      return { expression: negate(expression), unit };
    }
    case 'call':
      return meaningOfCall(node, written);
    case 'operator':
      return node.operator === '^' ? meaningOfPower(node, written) : meaningOfOperator(node, written);
  }
}

const build: Readonly<Record<Exclude<Operator, '^'>, (left: Expression, right: Expression) => Expression>> = {
  '+': plus,
  '-': minus,
  '*': times,
  '/': divide,
};

type OperatorNode = FormulaNode & { kind: 'operator' };

function meaningOfOperator(node: OperatorNode, written: Written): Meaning {
  const operator = node.operator as keyof typeof build;
  const left = meaningOf(node.left, written);
  const right = meaningOf(node.right, written);
  const expression = build[operator](left.expression, right.expression);
  if (operator === '*') return { expression, unit: productUnit(left.unit, right.unit) };
  if (operator === '/') return { expression, unit: quotientUnit(left.unit, right.unit) };
  return { expression, unit: sharedUnit([node.left, node.right], [left, right], written) };
}

function meaningOfPower({ left, right }: OperatorNode, written: Written): Meaning {
  const base = meaningOf(left, written);
  const exponent = meaningOf(right, written).expression;
  if (exponent.kind !== 'constant' || namesIn(right).length > 0) {
    throw fault('expression/exponent', right, written, { found: partText(written.text, right) });
  }
  return {
    expression: power(base.expression, exponent.value),
    unit: raisedUnit(base.unit, exponent.value),
  };
}

function meaningOfCall({ name, values }: FormulaNode & { kind: 'call' }, written: Written): Meaning {
  const { units, build: call } = functions.get(name)!;
  const meanings = values.map((value) => meaningOf(value, written));
  const expression = call(...meanings.map((meaning) => meaning.expression));
  const { unit } = meanings[0]!;
  if (units === 'root') return { expression, unit: raisedUnit(unit, 0.5) };
  if (units === 'kept') return { expression, unit: sharedUnit(values, meanings, written) };
  if (isPlain(unit)) return { expression, unit: plain };
  const part = partText(written.text, values[0]!);
  throw fault('expression/not-plain', values[0]!, written, { name, part, unit: unitInWords(unit) });
}

/** The one unit of parts that are added or compared. */
function sharedUnit(nodes: readonly FormulaNode[], meanings: readonly Meaning[], written: Written): PartUnit {
  let [unit, of] = [meanings[0]!.unit, nodes[0]!];
  for (const [index, node] of nodes.entries()) {
    const other = meanings[index]!.unit;
    const common = commonUnit(unit, other);
    if (common === null) {
      throw fault('expression/units', node, written, {
        left: partText(written.text, of),
        leftUnit: unitInWords(unit),
        right: partText(written.text, node),
        rightUnit: unitInWords(other),
      });
    }
    if (unit === 'any') [unit, of] = [common, node];
  }
  return unit;
}

function fault(
  code: Parameters<typeof problem>[0],
  node: FormulaNode,
  { pointer }: Written,
  values: Record<string, string>,
) {
  return problem(code, { place: node.at[0] + 1, ...values }, pointer);
}
