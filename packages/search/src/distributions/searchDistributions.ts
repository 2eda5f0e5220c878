import { setImmediate } from 'node:timers/promises';
import type { SearchDistributions } from '@tiegel/contract';
import type { CandidateColumns, JoinedStore } from '@tiegel/store';
import { gridDraw } from './gridDraw.ts';
import { shareError } from './shareError.ts';
import { edgesFor, spreadOver } from './spreads.ts';

/** Points drawn of the grid: a share is then known to 0.7 percentage points. */
const drawn = 20_000;

/** What is asked of: the search, its kept candidates by their stored names, and how to read them. */
interface Asked {
  number: number;
  quantities: readonly string[];
  /** stretches of the kept candidates, values in the order of `quantities` */
  kept: () => AsyncIterable<CandidateColumns>;
}

/**
 * How quantities lie over the grid of a search, over what passes, and over what was kept. The grid
 * is that of the plan on the data of the plan, so that nothing here depends on what day it is.
 */
export async function searchDistributions(
  store: JoinedStore,
  { number, quantities, kept }: Asked,
): Promise<Omit<SearchDistributions, 'among'>> {
  const plan = store.searches.plan(number);
  const draw = gridDraw(plan, quantities, drawn);
  const values: number[][] = quantities.map(() => []);
  let meeting = 0;
  for await (const stretch of kept()) {
    meeting += stretch.ranks.length;
    for (const [place, column] of stretch.values.entries()) {
      for (const value of column) if (value !== null) values[place]!.push(value);
    }
  }
  const passed = draw.passes.filter(Boolean).length / draw.count;
  const found: SearchDistributions['quantities'] = [];
  for (const [place, quantity] of quantities.entries()) {
    // To sort a million values takes a quarter of a second, and a page asks for eight quantities.
    await setImmediate();
    const limits = plan.specification.limits.filter((limit) => limit.quantity === quantity);
    const named = limits.flatMap(({ min, max }) => [min, max].filter((edge) => edge !== undefined));
    const grid = draw.values.get(quantity);
    const edges = edgesFor([finiteOf(grid), values[place]!], named);
    await setImmediate();
    const spreads = { grid: spreadOver(edges), passing: spreadOver(edges), keptOnes: spreadOver(edges) };
    grid?.forEach((value, at) => {
      spreads.grid.add(value);
      if (draw.passes[at]) spreads.passing.add(value);
    });
    for (const value of values[place]!) spreads.keptOnes.add(value);
    found.push({
      quantity,
      edges,
      grid: grid ? spreads.grid.spread : null,
      passing: grid ? spreads.passing.spread : null,
      kept: { ...spreads.keptOnes.spread, missing: meeting - values[place]!.length },
    });
  }
  return {
    sample: draw.count,
    exact: draw.whole,
    passed,
    error: draw.whole ? 0 : shareError(passed, draw.count),
    quantities: found,
    meeting,
  };
}

function* finiteOf(values: Iterable<number> = []): Generator<number> {
  for (const value of values) if (Number.isFinite(value)) yield value;
}
