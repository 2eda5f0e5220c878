import type { BestSoFar, Outcome, SearchSpecification } from '@tiegel/contract';
import { gridOf, pointsOf } from '@tiegel/engine';

/** Of more improvements every other one is left out: a line through them looks the same. */
const mostImprovements = 60;

/**
 * The best grid point of what was found so far, after the one that was known before: that one
 * itself where nothing better was found. Null while nothing passed, or where nothing is kept.
 */
export function bestSoFar(
  { points, best, bestOfSystems }: Outcome,
  specification: SearchSpecification,
  before: BestSoFar | null,
): BestSoFar | null {
  // Where only the best of each system is kept, the systems stand in the order of theirs.
  const [score, system, point] = best.length > 0 ? best : bestOfSystems;
  if (score === undefined) return before;
  const value = Number.isNaN(score) ? null : score;
  if (before !== null && before.score === value) return before;
  const { symbols, parts } = pointsOf(gridOf(specification))(system!, point!);
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return {
    composition: Object.fromEntries(symbols.map((symbol, place) => [symbol, (100 * parts[place]!) / whole])),
    score: value,
    improvements: thinned([...(before?.improvements ?? []), { points, score: value }]),
  };
}

function thinned(all: BestSoFar['improvements']): BestSoFar['improvements'] {
  if (all.length <= mostImprovements) return all;
  return all.filter((_, place) => place === 0 || place === all.length - 1 || place % 2 === 1);
}
