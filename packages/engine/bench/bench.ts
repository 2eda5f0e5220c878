import { type Chunk, encodeOutcome, type Outcome } from '@tiegel/contract';
import {
  cutOffOf,
  emptyOutcome,
  mergeOutcomes,
  type Prepared,
  type Score,
  scoreChunk,
  scoreReference,
} from '../src/index.ts';
import { type Machine, machine } from './machine.ts';
import { interleavedRates, type Rates } from './rates.ts';
import { middlesOf, preparedFor, systemsOf, type Workload, workloads } from './workloads.ts';

export interface Comparison {
  workload: string;
  /** Share of the points that meet every limit. */
  passing: number;
  reference: Rates & { points: number };
  fast: Rates & { points: number };
  /** Median of the fast side over median of the reference. */
  ratio: number;
}

export interface Report {
  machine: Machine;
  loadAtEnd: number;
  rounds: number;
  comparisons: Comparison[];
}

/** Thrown where the two scorers disagree: a rate of wrong answers is no rate. */
export class Disagreement extends Error {}

/**
 * Measures the reference and the fast scorer on every workload, on one core. Outcomes are
 * compared on the reference's points first.
 * @throws Disagreement
 */
export function bench(
  rounds: number,
  log: (line: string) => void,
  of: readonly Workload[] = workloads,
): Report {
  const at = machine();
  const comparisons = of.map((workload) => {
    log(`${workload.name} ...`);
    return compare(workload, rounds);
  });
  return { machine: at, loadAtEnd: machine().load, rounds, comparisons };
}

function compare(workload: Workload, rounds: number): Comparison {
  const prepared = preparedFor(workload);
  const { oneIn, reference: sample } = workload;
  const few = middlesOf(prepared, oneIn * sample.oneIn, sample.points);
  const many = systemsOf(prepared, oneIn);
  requireEqual(workload.name, scored(prepared, few, scoreReference), scored(prepared, few, scoreChunk));

  const [fewPoints, manyPoints] = [pointsIn(few), pointsIn(many)];
  const [reference, fast] = interleavedRates(
    [
      { points: fewPoints, run: () => scored(prepared, few, scoreReference) },
      { points: manyPoints, run: () => scored(prepared, many, scoreChunk) },
    ],
    rounds,
  ) as [Rates, Rates];
  const { passed, points } = scored(prepared, many, scoreChunk);
  return {
    workload: workload.name,
    passing: passed / points,
    reference: { ...reference, points: fewPoints },
    fast: { ...fast, points: manyPoints },
    ratio: fast.median / reference.median,
  };
}

/** The merged outcome of chunks, scored one after another as a worker does, with the cut-off known so far. */
function scored(prepared: Prepared, chunks: readonly Chunk[], score: Score): Outcome {
  return chunks.reduce((merged, chunk) => {
    const cutOff = cutOffOf(merged, prepared.ranking);
    return mergeOutcomes(merged, score(prepared, chunk, { cutOff })!, prepared.ranking);
  }, emptyOutcome(prepared.limits.length));
}

function requireEqual(workload: string, reference: Outcome, fast: Outcome): void {
  if (Buffer.compare(encodeOutcome(reference), encodeOutcome(fast)) === 0) return;
  throw new Disagreement(`${workload}: the fast scorer and the reference have different outcomes.`);
}

function pointsIn(chunks: readonly Chunk[]): number {
  return chunks.reduce((sum, { points }) => sum + points, 0);
}
