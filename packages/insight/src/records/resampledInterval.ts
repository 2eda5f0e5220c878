import { atOnce } from '../atOnce.ts';
import { seededRandom } from '../seededRandom.ts';

const RESAMPLES = 1000;

/**
 * The 95 % interval of a statistic, from drawing whole groups (element systems) with replacement:
 * alloys of one system are neighbours, and drawing them singly would make the interval too narrow.
 * Draws in which the statistic has no value (NaN) are left out. Seeded: the same input, the same interval.
 *
 * @param groups the group of each row
 * @param statistic of the rows drawn, by their index, in a list that the next draw overwrites; a row may come more than once
 * @source Efron & Tibshirani, An Introduction to the Bootstrap (1993), percentile interval (from memory)
 */
export function resampledInterval(
  groups: readonly string[],
  statistic: (rows: readonly number[]) => number,
): [low: number, high: number] {
  return atOnce(resamplingSteps(groups, statistic));
}

/** The same in steps of a draw each. */
export function* resamplingSteps(
  groups: readonly string[],
  statistic: (rows: readonly number[]) => number,
): Generator<undefined, [low: number, high: number]> {
  const members = [...Map.groupBy(groups.keys(), (row) => groups[row]!).values()];
  const random = seededRandom(0);
  const drawn: number[] = [];
  const values: number[] = [];
  for (let draw = 0; draw < RESAMPLES; draw += 1) {
    drawn.length = 0;
    for (const _ of members) {
      for (const row of members[Math.floor(random() * members.length)]!) drawn.push(row);
    }
    const value = statistic(drawn);
    if (!Number.isNaN(value)) values.push(value);
    yield;
  }
  values.sort((a, b) => a - b);
  const at = (share: number) => values[Math.round(share * (values.length - 1))]!;
  return [at(0.025), at(0.975)];
}
