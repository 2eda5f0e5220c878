import { evaluator } from '@tiegel/screening';
import type { Prepared } from '../prepared/prepare.ts';
import { partOfProgram } from './partOfProgram.ts';

/** The canonical values of some outputs at one point: amounts in parts of the whole, of the grid unless another is given. Overwritten by the next call. */
export type EvaluatePoint = (system: readonly number[], amounts: Int32Array, whole?: number) => Float64Array;

/** Evaluates some outputs of a search, and nothing that they do not need. */
export function pointEvaluator({ program, grid }: Prepared, outputs: readonly number[]): EvaluatePoint {
  const steps = outputs.map((output) => program.outputs[output]!);
  const { evaluate } = evaluator(partOfProgram(program, steps));
  const values = new Float64Array(outputs.length);
  return (system, amounts, whole = grid.total!) => {
    evaluate(system, amounts, whole, values);
    return values;
  };
}
