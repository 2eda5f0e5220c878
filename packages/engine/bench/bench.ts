import { type Comparison, compare } from './compare.ts';
import { type Machine, machine } from './machine.ts';
import { compiler } from './plainLoop.ts';
import { plainForms, sides } from './sides.ts';
import { type Workload, workloads } from './workloads.ts';

export interface Report {
  machine: Machine;
  loadAtEnd: number;
  /** What the compiler says of itself; null where there is none. */
  compiler: string | null;
  rounds: number;
  /** What each side forms at each point. */
  forms: Record<string, string>;
  comparisons: Comparison[];
}

/**
 * Measures every side on every workload, one thread each.
 * @throws Disagreement when two sides have different outcomes
 */
export function bench(
  rounds: number,
  log: (line: string) => void,
  of: readonly Workload[] = workloads,
): Report {
  const at = machine();
  const c = compiler();
  if (c === null) log('There is no C compiler (cc, gcc or clang): the column of the plain loop stays empty.');
  const comparisons = of.map((workload) => {
    log(`${workload.name} ...`);
    return compare(workload, rounds, c?.name ?? null);
  });
  return {
    ...{ machine: at, loadAtEnd: machine().load, compiler: c?.version ?? null, rounds, comparisons },
    forms: { 'plain C': plainForms, ...Object.fromEntries(sides.map(({ name, forms }) => [name, forms])) },
  };
}
