import type { SearchSpecification } from '@tiegel/contract';
import { type Sample, workloads } from '../../engine/bench/workloads.ts';

/** A search that is run as a whole command in a fresh process. */
export interface Command {
  name: string;
  onlyWhenAsked?: true;
  specification: SearchSpecification;
  workers: number;
  /** What of it the plain loop scores. */
  sample: Sample;
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

/** Around 20 million points each, but for the grids of all 20 elements; the last one takes two cores half a minute, and runs only when it is asked for. */
export const commands: readonly Command[] = [
  {
    name: 'fresh-five-percent-5',
    specification: searchOf('five-percent-5', 20),
    workers: 1,
    sample: whole,
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
