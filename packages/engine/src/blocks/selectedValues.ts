import type { Program } from '@tiegel/screening';
import { operatorLoop } from './operatorLoop.ts';
import { isOperator } from './steps.ts';

/**
 * Computes some steps, such as the score, at selected places only: what they are computed from is
 * moved together, and the operators that nothing else needs run over that.
 *
 * @param wanted the steps
 * @param operators the operators that are computed here, in order
 * @param values an array for each step, with its values at all places
 */
export function selectedValues(
  program: Program,
  wanted: readonly number[],
  operators: readonly number[],
  values: readonly Float64Array[],
): { compute(selected: Int32Array, count: number): void; values: readonly Float64Array[] } {
  const { steps } = program;
  const arrays = new Map(operators.map((step) => [step, arrayLike(values[step]!)]));
  const gathered: { from: Float64Array; to: Float64Array }[] = [];

  /** The values of a step at the selected places. */
  function selectedOf(step: number): Float64Array {
    const known = arrays.get(step);
    if (known) return known;
    const from = values[step]!;
    if (steps[step]!.kind === 'constant') return from;
    const to = arrayLike(from);
    arrays.set(step, to);
    gathered.push({ from, to });
    return to;
  }

  const loops = operators.map((number) => {
    const step = steps[number]!;
    if (!isOperator(step)) throw new TypeError('Only operators are computed at selected places.');
    return operatorLoop(step, selectedOf, selectedOf(number));
  });
  const found = wanted.map(selectedOf);

  return {
    values: found,
    compute(selected, count) {
      for (const { from, to } of gathered) gather(from, selected, to, count);
      for (const loop of loops) loop(count);
    },
  };
}

function gather(from: Float64Array, selected: Int32Array, to: Float64Array, count: number): void {
  for (let at = 0; at < count; at += 1) to[at] = from[selected[at]!]!;
}

function arrayLike(values: Float64Array): Float64Array {
  return new Float64Array(values.length);
}
