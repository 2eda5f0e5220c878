import {
  effectivePool,
  type Fault,
  type Plan,
  ProblemError,
  questionOf,
  type SearchSpecification,
  searchSpecificationFor,
} from '@tiegel/contract';
import { dataVersionOf, factsFor, type OwnColumn, symbols, withOwnColumn } from '@tiegel/elements';
import {
  countPoints,
  countSystems,
  engineVersion,
  type Grid,
  gridOf,
  type Prepared,
  prepare,
} from '@tiegel/engine';
import { lateQuantities } from '@tiegel/insight/late';
import { columnsOf, conditions, ownQuantities, quantities, quantityFinder } from '@tiegel/screening';
import type { LabData } from '../labData.ts';
import { namedIn, ownOf } from '../namedIn.ts';
import { conditionsAsked } from './conditionsAsked.ts';
import { gridFaults, unreachableFaults, valueFaults } from './faults.ts';
import { groundNotices } from './groundNotices.ts';

/** A search that can be run, and all that follows from its specification before anything is scored. */
export interface CheckedSearch {
  plan: Plan;
  grid: Grid;
  prepared: Prepared;
  systems: number;
  points: number;
  question: string;
  notices: string[];
}

/** What specifications may say, with these columns in force. */
function specificationsWith(columns: readonly OwnColumn[]) {
  return searchSpecificationFor({
    quantities: [...quantities, ...columns],
    lateQuantities,
    elements: symbols,
    conditions: Object.values(conditions),
    letFaults: (lets) => faultsOf(() => ownQuantities({ columns, lets })),
  });
}

const usual = specificationsWith([]);

function faultsOf(attempt: () => unknown): readonly Fault[] {
  try {
    attempt();
    return [];
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
}

/** The form of a request alone: what it says, whatever the data. Throws a ProblemError with every fault. */
export function checkForm(
  request: unknown,
  { columns = [] }: LabData,
): { specification: SearchSpecification; notices: string[] } {
  return (columns.length === 0 ? usual : specificationsWith(columns)).check(request);
}

/**
 * Checks a request: its form, then that the data know every value that it needs, that its grid
 * has points and not more than `maxPoints`, and that no limit is provably out of reach. Throws a
 * ProblemError with every fault of the first of these steps that finds one.
 */
export function checkSearch(request: unknown, data: LabData, maxPoints: number): CheckedSearch {
  const checked = checkGrid(request, data, maxPoints);
  const named = namedIn(data.prices?.currency ?? null, ownOf(checked.plan));
  refuse(unreachableFaults(checked.prepared, named));
  return checked;
}

/** The same check but for limits out of reach, for those who look at the grid to see where limits belong. */
export function checkGrid(request: unknown, data: LabData, maxPoints: number): CheckedSearch {
  const { specification, notices } = checkForm(request, data);
  const plan = planOf(specification, data);
  const grid = gridOf(specification);
  const points = countPoints(grid);
  refuse([...valueFaults(plan), ...gridFaults(points, maxPoints)]);
  const named = namedIn(data.prices?.currency ?? null, ownOf(plan));
  return {
    ...{ plan, grid, notices: [...notices, ...groundNotices(plan)] },
    prepared: prepare(plan),
    systems: countSystems(grid),
    points: Number(points),
    question: questionOf(specification, named, conditionsAsked(plan)),
  };
}

/** The plan of a specification on today's data: facts of its pool, prices, and every condition by its value. */
function planOf(specification: SearchSpecification, { prices, columns = [], pairs = [] }: LabData): Plan {
  const defaults = Object.values(conditions).flatMap(({ name, default: value }) =>
    value === null ? [] : [[name, value] as const],
  );
  const read = columnsReadBy(specification, columns);
  return {
    engineVersion,
    dataVersion: dataVersionOf(prices, read, pairs),
    specification,
    facts: read.reduce(withOwnColumn, factsFor(effectivePool(specification.elements), { prices, pairs })),
    ...(read.length > 0 ? { columns: read.map(({ values: _, ...described }) => described) } : {}),
    conditions: { ...Object.fromEntries(defaults), ...specification.conditions },
  };
}

/** Those columns that a limit, the ranking or a figure of merit reads: others do not belong to the search. */
function columnsReadBy(
  { limits, rank, front = [], lets = {} }: SearchSpecification,
  columns: readonly OwnColumn[],
): OwnColumn[] {
  if (columns.length === 0) return [];
  const quantityOf = quantityFinder({ columns, lets });
  const named = [...[...limits, ...rank, ...front].map(({ quantity }) => quantity), ...Object.keys(lets)];
  const read = new Set(named.flatMap((id) => columnsOf(quantityOf(id)).elements));
  return columns.filter(({ id }) => read.has(id));
}

function refuse(faults: ConstructorParameters<typeof ProblemError>[0]): void {
  if (faults.length > 0) throw new ProblemError(faults);
}
