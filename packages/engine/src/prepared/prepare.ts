import type { Plan } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import { bind, type Interval, type Program, quantityFinder } from '@tiegel/screening';
import { engineVersion } from '../engineVersion.ts';
import type { Grid } from '../grid/grid.ts';
import { gridOf } from '../grid/gridOf.ts';
import { type SystemNumbering, systemNumbering } from '../grid/systemNumbering.ts';
import { type LimitRange, limitRange } from './limitRange.ts';
import { outputBounds } from './outputBounds.ts';
import { type Ranking, rankingOf } from './ranking.ts';
import { scoreExpression } from './scoreExpression.ts';

/** A limit, ready to be tested. */
export interface PreparedLimit extends LimitRange {
  /** Which output of the program is limited. */
  output: number;
}

/** A plan bound once, for scoring any number of its chunks. */
export interface Prepared {
  plan: Plan;
  grid: Grid;
  systems: SystemNumbering;
  ranking: Ranking;
  /** Its outputs: the limited quantities, each once, the score, and those of the front. */
  program: Program;
  /** Ids of the limited quantities, in the order of the outputs. */
  limited: readonly string[];
  /** In the order of the specification. */
  limits: readonly PreparedLimit[];
  /** Which output is the score. */
  scoreOutput: number;
  /** Which outputs are the quantities of the front, in the order of the specification. */
  frontOutputs: readonly number[];
  /** What each output may be on the grid. */
  bounds: readonly Interval[];
}

/**
 * Binds a plan's formulas to its data.
 * @throws ProblemError plan/engine-version for the plan of another engine version
 * @throws RangeError when the facts are not those of the specification's elements
 */
export function prepare(plan: Plan): Prepared {
  if (plan.engineVersion !== engineVersion) {
    throw problem('plan/engine-version', { planned: plan.engineVersion, here: engineVersion });
  }
  const { specification, facts, conditions } = plan;
  const limited = [...new Set(specification.limits.map(({ quantity }) => quantity))];
  const quantityOf = quantityFinder({ columns: plan.columns ?? [], lets: specification.lets ?? {} });
  const formulas = limited.map((id) => quantityOf(id).formula);
  const grid = gridOf(specification);
  if (facts.symbols.join() !== grid.symbols.join()) {
    throw new RangeError('The facts of a plan hold exactly the elements of its grid, in alphabetical order.');
  }
  const score = scoreExpression(specification.rank, quantityOf);
  const front = (specification.front ?? []).map(({ quantity }) => quantityOf(quantity).formula);
  const program = bind([...formulas, score, ...front], facts, conditions);
  return {
    plan,
    grid,
    systems: systemNumbering(grid),
    ranking: rankingOf(specification),
    program,
    limited,
    limits: specification.limits.map((limit) => ({
      ...limitRange(limit),
      output: limited.indexOf(limit.quantity),
    })),
    scoreOutput: limited.length,
    frontOutputs: front.map((_, place) => limited.length + 1 + place),
    bounds: outputBounds(grid, program),
  };
}
