import type { Chunk, Outcome } from '@tiegel/contract';
import { demoPrices, factsFor } from '@tiegel/elements';
import {
  cutOffOf,
  emptyOutcome,
  engineVersion,
  mergeOutcomes,
  type Prepared,
  prepare,
  type Score,
} from '../src/index.ts';
import { differenceOf, digestOfOutcome } from './digest.ts';
import { type PlainLoop, plainLoop } from './plainLoop.ts';
import { interleavedRates, type Rates, secondsOf, type Timed } from './rates.ts';
import { middleChunks, sampledChunks } from './sampledChunks.ts';
import { type Side, sides } from './sides.ts';
import type { Workload } from './workloads.ts';

/** What one side did: points of one round, points a second, and how much faster than the plain loop and the reference that is. */
export interface Measured extends Rates {
  side: string;
  points: number;
  overPlain: number | null;
  overReference: number;
}

export interface Comparison {
  workload: string;
  tally: string;
  /** Share of the sampled points that meet every limit. */
  passing: number;
  /** The plain loop first, where there is a compiler. */
  sides: Measured[];
}

/** Thrown where two sides disagree: a rate of wrong answers is no rate. */
export class Disagreement extends Error {}

/** A side of one workload: what is compared, and what is measured. */
interface Entry extends Timed {
  side: string;
}

/**
 * Measures every side on a workload, one thread each, warm. Outcomes are compared first.
 * @param compile a C compiler, or null where there is none
 * @throws Disagreement
 */
export function compare(workload: Workload, rounds: number, compile: string | null): Comparison {
  const prepared = preparedFor(workload);
  const plain = compile === null ? null : plainLoop(compile, prepared, workload.sample);
  try {
    const passing = requireAgreement(workload, prepared, plain);
    const entries = entriesOf(workload, prepared, plain);
    for (const { run } of entries) run();
    const rates = interleavedRates(entries, rounds);
    const medianOf = (side: string) => rates[entries.findIndex((one) => one.side === side)]?.median;
    const [c, reference] = [medianOf('plain C'), medianOf('reference')!];
    return {
      ...{ workload: workload.name, tally: workload.specification.tally, passing },
      sides: entries.map(({ side, points }, index) => ({
        ...{ side, points, ...rates[index]! },
        overPlain: c === undefined ? null : rates[index]!.median / c,
        overReference: rates[index]!.median / reference,
      })),
    };
  } finally {
    plain?.remove();
  }
}

/** The plan of a workload, on the project's data with its invented prices, ready for scoring. */
export function preparedFor({ specification }: Workload): Prepared {
  return prepare({
    engineVersion,
    dataVersion: 'bench',
    specification,
    facts: factsFor(specification.elements.pool, { prices: demoPrices }),
    conditions: {},
  });
}

function sidesFor({ specification }: Workload): Side[] {
  return sides.filter(({ prunes }) => !prunes || specification.tally !== 'each');
}

/** Every side against the first one, on the same points: the slow ones on few of them. Returns the share that passes. */
function requireAgreement(workload: Workload, prepared: Prepared, plain: PlainLoop | null): number {
  const sampled = sampledChunks(prepared, workload.sample);
  const few = middleChunks(prepared, workload.sample, workload.reference);
  const truth = digestOfOutcome(scored(prepared, few, sides[0]!.score));
  let expected = plain?.run().digest ?? null;
  let passing = (truth.passed ?? 0) / truth.points;
  for (const { name, score, few: slow } of sidesFor(workload)) {
    requireEqual(workload.name, name, truth, digestOfOutcome(scored(prepared, few, score)));
    if (slow) continue;
    const found = digestOfOutcome(scored(prepared, sampled, score));
    expected ??= found;
    requireEqual(workload.name, name, expected, found);
  }
  if (expected?.passed) passing = expected.passed / expected.points;
  return passing;
}

function requireEqual(workload: string, side: string, ...digests: Parameters<typeof differenceOf>): void {
  const difference = differenceOf(...digests);
  if (difference !== null) throw new Disagreement(`${workload}: ${side} has another outcome; ${difference}.`);
}

function entriesOf(workload: Workload, prepared: Prepared, plain: PlainLoop | null): Entry[] {
  const few = middleChunks(prepared, workload.sample, workload.reference);
  const sampled = sampledChunks(prepared, workload.sample);
  const wide = sampledChunks(prepared, workload.pruned ?? workload.sample);
  const entries = sidesFor(workload).map(({ name, score, few: slow, prunes }): Entry => {
    const chunks = slow ? few : prunes ? wide : sampled;
    const run = () => secondsOf(() => scored(prepared, chunks, score));
    return { side: name, points: pointsIn(chunks), run };
  });
  if (plain === null) return entries;
  return [{ side: 'plain C', points: pointsIn(sampled), run: () => plain.run().seconds }, ...entries];
}

/** The merged outcome of chunks, scored one after another as a worker does, with the cut-off known so far. */
function scored(prepared: Prepared, chunks: readonly Chunk[], score: Score): Outcome {
  const { ranking, limits, plan } = prepared;
  return chunks.reduce(
    (merged, chunk) =>
      mergeOutcomes(merged, score(prepared, chunk, { cutOff: cutOffOf(merged, ranking) })!, ranking),
    emptyOutcome(limits.length, plan.specification.tally),
  );
}

function pointsIn(chunks: readonly Chunk[]): number {
  return chunks.reduce((sum, { points }) => sum + points, 0);
}
