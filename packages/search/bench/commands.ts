import type { SearchSpecification } from '@tiegel/contract';
import { type Sample, workloads } from '../../engine/bench/workloads.ts';

/** A search that is run as a whole command in a fresh process. */
export interface Command {
  name: string;
  onlyWhenAsked?: true;
  specification: SearchSpecification;
  workers: number;
  /** What of it the plain loop scores; null where it does not know the quantities. */
  sample: Sample | null;
}

const whole: Sample = { oneIn: 1, group: 1 };

/** The search of a workload, on the first so many elements of its pool. */
function searchOf(
  name: string,
  poolSize: number,
  given: Partial<SearchSpecification> = {},
): SearchSpecification {
  const { specification } = workloads.find((one) => one.name === name)!;
  const { pool } = specification.elements;
  return {
    ...specification,
    elements: { ...specification.elements, pool: pool.slice(0, poolSize) },
    ...given,
  };
}

/**
 * Around 20 million points each, but for the grids of all 20 elements; the last one takes two cores half a minute, and runs only when it is asked for.
 * fresh-estimate-and-merit is fresh-five-percent-5 limited and ranked by the phase estimate and a figure of merit
 * of one's own beside.
 */
export const commands: readonly Command[] = [
  {
    name: 'fresh-five-percent-5',
    specification: searchOf('five-percent-5', 20),
    workers: 1,
    sample: whole,
  },
  {
    name: 'fresh-estimate-and-merit',
    specification: searchOf('five-percent-5', 20, {
      lets: { merit: 'youngsModulus / density' },
      limits: [
        ...searchOf('five-percent-5', 20).limits,
        { quantity: 'singlePhaseEstimate', min: 0.5 },
        { quantity: 'merit', min: 12 },
      ],
      rank: [
        { quantity: 'singlePhaseEstimate', prefer: 'high', from: 0, to: 1 },
        { quantity: 'merit', prefer: 'high', from: 5, to: 40 },
      ],
    }),
    workers: 1,
    sample: null,
  },
  { name: 'fresh-one-percent-5', specification: searchOf('one-percent-5', 8), workers: 1, sample: whole },
  { name: 'fresh-five-percent-6', specification: searchOf('five-percent-6', 14), workers: 1, sample: whole },
  {
    name: 'fresh-full-five-percent-5',
    specification: searchOf('full-five-percent-5', 20),
    workers: 1,
    sample: whole,
  },
  {
    name: 'fresh-full-five-percent-6',
    specification: searchOf('full-five-percent-6', 20),
    workers: 1,
    sample: { oneIn: 12, group: 64 },
  },
  {
    name: 'fresh-full-one-percent',
    specification: searchOf('full-one-percent', 20),
    workers: 1,
    sample: { oneIn: 388, group: 4 },
  },
  {
    name: 'fresh-whole-one-percent',
    onlyWhenAsked: true,
    specification: searchOf('one-percent-5', 20),
    workers: 2,
    sample: { oneIn: 388, group: 4 },
  },
];
