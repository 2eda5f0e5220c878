import type { Program, Step } from '@tiegel/screening';
import { variationsOf } from '../blocks/steps.ts';
import type { Grid } from '../grid/grid.ts';
import { outputBounds } from '../prepared/outputBounds.ts';
import { EPSILON, type Form, greatestOf, linearForm, pairForm } from './form.ts';
import { isFar } from './isFar.ts';
import type { Ends, Node, Nodes } from './node.ts';
import { nodeMaker } from './nodeMaker.ts';
import { noSlack, type Slack } from './slack.ts';

/** A program as nodes, for a grid whose whole is `total` parts. */
export interface Lowered {
  nodes: Nodes;
  /** The node of each output. */
  outputs: readonly Node[];
}

/**
 * The steps of a program as nodes of a kernel. Sums become forms in the parts of a grid point, steps
 * that do not vary within a system become single numbers, choices that are always made the same way
 * are made. Null where data are missing, where numbers are far from 1 (see isFar), or where not every system
 * makes the same whole.
 */
export function lower(program: Program, grid: Grid): Lowered | null {
  const { total, symbols, components } = grid;
  if (total === null || lacksData(program) || hasFarNumbers(program)) return null;
  const { steps } = program;
  const size = symbols.length;
  const nodes = nodeMaker(size, total, components.max);
  const every = outputBounds(grid, { ...program, outputs: steps.map((_, step) => step) });
  const variations = variationsOf(program);
  const made: Node[] = [];

  function nodeOf(step: Step, number: number): Node {
    const { low, high, missing } = every[number]!;
    const ends: Ends = { low, high, mayLack: missing !== 'never' };
    if (step.kind === 'constant') return nodes.constant(step.value);
    if (variations[number] !== 'point') return nodes.system(number, ends);
    const of = (operand: number): Node => made[operand]!;
    switch (step.kind) {
      case 'linear': {
        const form = linearForm(step.coefficients, 1 / (step.divisor * total!), total!);
        return nodes.sum(number, form, canonicalSlack(form, components.max, total!), ends);
      }
      case 'pairs': {
        const form = pairForm(step.coefficients, size, 1 / (step.divisor * total! * total!), total!);
        return nodes.sum(number, form, canonicalSlack(form, 2 * components.max, total!), ends);
      }
      case 'entropy':
        return nodes.entropy(ends);
      case 'add':
      case 'subtract':
      case 'multiply':
      case 'divide':
      case 'lesser':
      case 'greater':
        return nodes.binary(step.kind, of(step.left), of(step.right), ends);
      case 'negate':
      case 'squareRoot':
      case 'absolute':
      case 'exponential':
      case 'logarithm':
        return nodes.unary(step.kind, of(step.of), ends);
      case 'power':
        return nodes.power(of(step.of), step.exponent, ends);
      case 'choose':
        return choiceOf(step, of, ends);
      default:
        return nodes.system(number, ends);
    }
  }

  function choiceOf(
    step: Extract<Step, { kind: 'choose' }>,
    of: (operand: number) => Node,
    ends: Ends,
  ): Node {
    const [left, right] = [of(step.left), of(step.right)];
    const then = of(step.then);
    const otherwise = step.otherwise === null ? null : of(step.otherwise);
    if (!left.mayLack && !right.mayLack) {
      const strict = step.operator === '<';
      if (strict ? left.high < right.low : left.high <= right.low) return then;
      if (otherwise && (strict ? left.low >= right.high : left.low > right.high)) return otherwise;
    }
    return nodes.choose({ left, operator: step.operator, right }, then, otherwise, ends);
  }

  for (const [number, step] of steps.entries()) made.push(nodeOf(step, number));
  return { nodes, outputs: program.outputs.map((step) => made[step]!) };
}

/** How far the evaluator's value of a sum may lie from the real one: a rounding for each addition and product. */
function canonicalSlack(form: Form, elements: number, total: number): Slack {
  if (form.exact) return { absolute: 0, relative: 4 * EPSILON };
  const rounding = EPSILON * (2 * elements + 8);
  const nonNegative = [...form.linear, ...(form.quadratic ?? [])].every((value) => value >= 0);
  if (nonNegative) return { ...noSlack, relative: rounding };
  return { ...noSlack, absolute: rounding * form.scale * greatestOf(form, total) };
}

/** Whether an element or pair of the pool lacks a value that a sum needs, or has no finite one. */
function lacksData({ steps }: Program): boolean {
  return steps.some(
    (step) => (step.kind === 'linear' || step.kind === 'pairs') && !step.coefficients.every(Number.isFinite),
  );
}

/** Whether a constant or a value of the data is far from 1. The greatest number there is only ever bounds what is finite. */
function hasFarNumbers({ steps }: Program): boolean {
  return steps.some((step) => {
    if (step.kind === 'constant') return isFar(step.value) && step.value !== Number.MAX_VALUE;
    if (step.kind !== 'linear' && step.kind !== 'pairs') return false;
    return step.coefficients.some((value) => isFar(value / step.divisor));
  });
}
