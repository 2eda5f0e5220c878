import type { Chunk, Outcome } from '@tiegel/contract';
import { evaluator } from '@tiegel/screening';
import { wholeOf } from './grid/grid.ts';
import { pointNumbering } from './grid/pointNumbering.ts';
import { counted } from './outcome/counted.ts';
import { keptPoints } from './outcome/keptPoints.ts';
import { outsideOf } from './outcome/outsideOf.ts';
import type { Prepared } from './prepared/prepare.ts';
import type { ScoreOptions } from './scoring.ts';

/** How often scoring asks whether to stop: after so many points. */
const pointsBetweenQuestions = 4096;

/**
 * Scores a chunk in the plainest way: every point by its number, every formula by the canonical
 * evaluator. The truth that the faster scorers are compared with, outcome for outcome.
 */
export function scoreReference(prepared: Prepared, chunk: Chunk, options: ScoreOptions): Outcome | null {
  const { grid, systems, program, limited, limits, scoreOutput, frontOutputs, ranking } = prepared;
  const { evaluate } = evaluator(program);
  const values = new Float64Array(program.outputs.length);
  const frontValues = new Float64Array(frontOutputs.length);
  const passedEach = new Array<number>(limits.length).fill(0);
  const withoutValue = new Array<number>(limited.length).fill(0);
  const kept = keptPoints(ranking, options.cutOff);
  let points = 0;
  let passed = 0;

  for (let number = chunk.firstSystem; number < chunk.endSystem; number += 1) {
    const system = systems.systemAt(number);
    const numbering = pointNumbering(grid, system);
    const end = chunk.endPoint ?? numbering.count;
    kept.enter(number);
    for (let point = chunk.firstPoint; point < end; point += 1) {
      if (points % pointsBetweenQuestions === 0 && options.stopped?.()) return null;
      points += 1;
      evaluate(system, numbering.partsAt(point), wholeOf(grid, system.length), values);
      limited.forEach((_, output) => {
        if (!Number.isFinite(values[output])) withoutValue[output]! += 1;
      });
      let passes = true;
      limits.forEach(({ output, least, greatest }, limit) => {
        if (values[output]! >= least && values[output]! <= greatest) passedEach[limit]! += 1;
        else passes = false;
      });
      if (!passes) continue;
      passed += 1;
      const score = Number.isFinite(values[scoreOutput]) ? values[scoreOutput]! : Number.NaN;
      kept.offer(score, point);
      frontOutputs.forEach((output, place) => {
        frontValues[place] = values[output]!;
      });
      kept.offerToFront(number, score, point, frontValues);
    }
  }
  const outside = outsideOf(limited, withoutValue);
  const { tally } = prepared.plan.specification;
  return { points, ...counted(tally, { passed, passedEach, outside }), ...kept.finish() };
}
