import type { Program, Step } from '@tiegel/screening';
import { isOperator, stepsBehind } from '../blocks/steps.ts';

/** The program that computes some steps of another and nothing that they do not need: the same values, sooner. */
export function partOfProgram(program: Program, wanted: readonly number[]): Program {
  const needed = [...stepsBehind(program, wanted)].sort((one, other) => one - other);
  const numbers = new Map(needed.map((step, number) => [step, number]));
  const of = (step: number): number => numbers.get(step)!;
  const steps = needed.map((number) => renumbered(program.steps[number]!, of));
  return { symbols: program.symbols, steps, outputs: wanted.map(of) };
}

function renumbered(step: Step, of: (step: number) => number): Step {
  if (!isOperator(step)) return step;
  if (step.kind === 'choose') {
    const [left, right, then] = [of(step.left), of(step.right), of(step.then)];
    const otherwise = step.otherwise === null ? null : of(step.otherwise);
    return { ...step, left, right, then, otherwise };
  }
  return 'of' in step
    ? { ...step, of: of(step.of) }
    : { ...step, left: of(step.left), right: of(step.right) };
}
