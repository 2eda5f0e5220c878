import { bare, type Condition, type Node, type Nodes } from '../node.ts';
import type { Roughen } from '../roughened.ts';
import { absoluteOf } from '../slack.ts';
import { distance, formAtom, nodeAtom } from './atom.ts';
import type { Comparer, Relation } from './comparer.ts';
import { choiceOf, failsToHold, holds } from './condition.ts';
import { decided } from './decided.ts';
import { isFiniteNode, isNumber } from './hasValue.ts';
import { mayBeNaN } from './mayBeNaN.ts';
import { isUpper, mirrored } from './operator.ts';
import { all, any, type Test } from './test.ts';
import { throughConstants } from './throughConstants.ts';
import { throughOperand } from './throughOperand.ts';
import { throughQuotient } from './throughQuotient.ts';

/** Tests of one program. */
export interface Tests {
  /** Whether a node lies between two doubles, ends included; NaN and infinities do not. */
  within(node: Node, least: number, greatest: number): Test;
  /** Whether a node is finite. */
  isFinite(node: Node): Test;
  holds(condition: Condition): Test;
  /** Whether a condition is known not to hold; where a side is missing, neither this nor `holds` is true. */
  failsToHold(condition: Condition): Test;
}

/**
 * Rewrites comparisons until what is compared is cheap to form: constants go to the other side,
 * quotients become products by the sign of their divisor, roots become squares, exp, ln and powers
 * are taken back, extremes and choices become 'and' and 'or', and polynomials of degree 2 become
 * one form. Where no rule fits the node is computed.
 *
 * All along a threshold g stands for some number within g ± width: each rule widens it by what the
 * canonical evaluator rounds on the way, so the width that arrives is a proven one.
 *
 * @param total parts that make the whole
 * @param elements the most elements of a system
 */
export function testsOf(nodes: Nodes, roughen: Roughen, total: number, elements: number): Tests {
  const comparer: Comparer = {
    ...{ nodes, roughen, total, elements },
    compare: (node, operator, threshold, width) => compared(comparer, node, { operator, threshold, width }),
  };
  const { compare } = comparer;
  return {
    within(node, least, greatest) {
      const sides = [
        ...(least === -Number.MAX_VALUE ? [] : [compare(node, '>=', least, 0)]),
        ...(greatest === Number.MAX_VALUE ? [] : [compare(node, '<=', greatest, 0)]),
      ];
      return all(...sides, ...(sides.length < 2 ? [isFiniteNode(comparer, node)] : []));
    },
    isFinite: (node) => isFiniteNode(comparer, node),
    holds: (condition) => holds(comparer, condition),
    failsToHold: (condition) => failsToHold(comparer, condition),
  };
}

/** The rules in their order: what ends, constants, forms and operands tell, else the node itself. */
function compared(comparer: Comparer, given: Node, { operator, threshold, width }: Relation): Test {
  const node = bare(given);
  // No finite number lies beyond the greatest one, and times 0 an infinite one would be no number.
  const reached = Math.max(-Number.MAX_VALUE, Math.min(Number.MAX_VALUE, threshold));
  const relation = { operator, threshold: reached, width };
  return (
    decided(node, relation) ??
    throughForm(comparer, node, relation) ??
    throughConstants(comparer, node, relation) ??
    throughEqualForm(comparer, node, relation) ??
    throughOperation(comparer, node, relation) ??
    nodeAtom(node, relation)
  );
}

/** factor · P of a form that is built up along the grid. */
function throughForm(comparer: Comparer, node: Node, { operator, threshold, width }: Relation): Test | null {
  if (node.operation.kind !== 'form') return null;
  const { base, factor } = node.operation;
  const side = factor > 0 ? operator : mirrored[operator];
  const { absolute, relative } = node.form!.slack;
  const slack = (absolute + relative * Math.abs(threshold) + width) / Math.abs(factor);
  const greatest = distance(node, threshold) / Math.abs(factor);
  return formAtom(comparer, base, side, threshold / factor, slack, greatest);
}

/** The form that a node is in real arithmetic, whatever it is made of. */
function throughEqualForm(
  comparer: Comparer,
  node: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  if (node.form === null) return null;
  const { form, slack } = node.form;
  const from = absoluteOf({ ...node, slack }) + width;
  const greatest = distance(node, threshold) / form.scale;
  return formAtom(comparer, form, operator, threshold / form.scale, from / form.scale, greatest);
}

/** By what a node computes from others. */
function throughOperation(comparer: Comparer, node: Node, relation: Relation): Test | null {
  const { operation } = node;
  const { operator, threshold, width } = relation;
  const same = (one: Node): Test => comparer.compare(one, operator, threshold, width);
  switch (operation.kind) {
    case 'lesser':
    case 'greater': {
      const sides = [operation.left, operation.right];
      const both = sides.map(same);
      const missing = sides.filter(mayBeNaN).map((one) => isNumber(comparer, one));
      const every = isUpper(operator) === (operation.kind === 'greater');
      return all(...missing, every ? all(...both) : any(...both));
    }
    case 'choose':
      return choiceOf(comparer, operation, same);
    case 'divide':
      return throughQuotient(comparer, node, operation.left, bare(operation.right), relation);
    default:
      return throughOperand(comparer, node, relation);
  }
}
