import { evaluator, type Program, type Step } from '@tiegel/screening';
import type { Variation } from './steps.ts';

/** The steps that are the same at all points of a system. */
export interface SystemValues {
  /** Computes them for another system. */
  enter(system: readonly number[]): void;
  /** Writes them at `count` places from `offset` on. */
  fill(offset: number, count: number): void;
}

/**
 * Computes by the canonical evaluator, once for each system, what does not vary inside it.
 *
 * @param needed the steps to write
 * @param values an array for each step
 */
export function systemValues(
  program: Program,
  variations: readonly Variation[],
  needed: readonly number[],
  values: readonly Float64Array[],
): SystemValues {
  const written = needed.filter((step) => variations[step] === 'system');
  if (written.length === 0) return { enter() {}, fill() {} };
  const idle: Step = { kind: 'constant', value: 0 };
  const steps = program.steps.map((step, number) => (variations[number] === 'point' ? idle : step));
  const { evaluate } = evaluator({ symbols: program.symbols, steps, outputs: written });
  const present = new Float64Array(program.symbols.length).fill(1);
  const results = new Float64Array(written.length);
  return {
    enter: (system) => evaluate(system, present, system.length, results),
    fill(offset, count) {
      for (const [index, step] of written.entries()) {
        values[step]!.fill(results[index]!, offset, offset + count);
      }
    },
  };
}
