import type { FrontEntry } from '@tiegel/contract';
import { countPoints, type Grid, gridOf } from '@tiegel/engine';
import { conditions, ownQuantities, quantities } from '@tiegel/screening';
import { pointNumbering } from '../../packages/engine/src/grid/pointNumbering.ts';
import { systemNumbering } from '../../packages/engine/src/grid/systemNumbering.ts';
import { lineStarts } from './chunksOf.ts';
import { gridValues } from './gridValues.ts';
import { type Pick, pickFrom } from './pick.ts';
import { randomColumns } from './randomColumns.ts';
import { randomFormula } from './randomFormula.ts';
import { type GridKind, randomGrid, withGrid } from './randomGrid.ts';
import { limitsOf } from './randomLimits.ts';
import { rankOf } from './randomRank.ts';
import type { SearchCase } from './searchCase.ts';

const ids = quantities.map(({ id }) => id);
/** Every so-manieth search asks for a Pareto front, too. */
const frontEvery = 9;
/** As many as have no divisor in common with the quantities: every kind comes with each of them. */
const kinds: readonly GridKind[] = [
  ...(['any', 'any', 'any', 'any', 'own bounds', 'tiny', 'equimolar', 'any', 'own bounds'] as const),
  ...(['any', 'fine', 'one huge system', 'many components', 'own bounds', 'wide pool', 'large'] as const),
  ...(['forced', 'many systems', 'huge'] as const),
];

/**
 * The case of a number and a seed. Numbers that follow one another go through all quantities as
 * limits and as rankings, and through all kinds of grids.
 */
export function randomCase(number: number, seed: number): SearchCase {
  const pick = pickFrom(seed + 7919 * number);
  const kind = kinds[number % kinds.length]!;
  const grid = randomGrid(pick, kind);
  const bare: SearchCase = {
    specification: withGrid(grid),
    data: dataOf(pick, grid.elements.pool),
    ...(pick.chance(0.2) && { columns: randomColumns(pick, grid.elements.pool) }),
    pointsPerChunk: Math.ceil(Number(countPoints(gridOf(withGrid(grid)))) / pick.whole(1, 20)),
  };
  const own = ownQuantitiesOf(pick, bare, number);
  const named: SearchCase = own.lets ? withLets(bare, own.lets) : bare;
  const limited = [
    ids[number % ids.length]!,
    ...pick.some(ids, pick.one([0, 0, 1, 1, 2, 2, 3, kind === 'tiny' ? 9 : 4])),
  ];
  const ranked = [
    ids[(number * 5 + 3) % ids.length]!,
    ...(pick.chance(0.6) ? [] : pick.some(ids, pick.whole(1, 3))),
  ];
  for (const id of own.ids) {
    if (pick.chance(0.6)) limited.push(id);
    if (pick.chance(0.4)) ranked[pick.whole(0, ranked.length - 1)] = id;
  }
  const values = gridValues(named, [...new Set([...limited, ...ranked])], number);
  const { specification } = named;
  const given = pick.chance(0.25) ? conditionsOf(pick) : null;
  return {
    ...named,
    ...(kind === 'huge' && { part: partOf(pick, gridOf(specification)) }),
    specification: {
      ...specification,
      name: `${number}: ${kind}, ${limited[0]}, ${ranked[0]}`,
      limits: (pick.chance(0.1) ? [...limited, ...limited] : [...new Set(limited)]).flatMap((id) =>
        limitsOf(pick, id, values.get(id)!),
      ),
      // The same quantity twice is two wishes about it.
      rank: rankOf(pick, pick.chance(0.1) ? [...ranked, ranked[0]!] : [...new Set(ranked)], values),
      ...(given && { conditions: given }),
      keep: pick.one([1, 2, 5, 5, 40, 40, 300, 1000, 5000, 1_000_000, 0]),
      keepPerSystem: pick.one([0, 0, 0, 1, 3, 20]),
      ...(number % frontEvery === 5 && { front: frontOf(pick, own.ids) }),
    },
  };
}

/** Some thousand points of a system, anywhere in it, at its beginning or its end. */
function partOf(pick: Pick, grid: Grid): NonNullable<SearchCase['part']> {
  const systems = systemNumbering(grid);
  for (;;) {
    const system = pick.whole(0, systems.count - 1);
    const { count } = pointNumbering(grid, systems.systemAt(system));
    const lineBefore = lineStarts(grid, system);
    const most = pick.whole(500, 5000);
    const from = lineBefore(
      Math.floor(Math.max(0, count - most) * pick.one([0, 1, pick.between(0, 1), pick.between(0, 1)])),
    );
    const until = lineBefore(Math.min(count, from + most));
    if (until > from) return { system, from, until };
  }
}

function frontOf(pick: Pick, own: readonly string[]): FrontEntry[] {
  const prefer = () => pick.one(['high', 'low'] as const);
  // One's own quantities tie, lack and are infinite more than others: where there are some, one is in it.
  const quantities = [...pick.some(own, 1), ...pick.some(ids, pick.whole(2, 3))];
  return quantities.map((quantity) => ({ quantity, prefer: prefer() }));
}

/** Any of the conditions, anywhere in their ranges and at the ends. */
function conditionsOf(pick: Pick): Record<string, number> {
  const some = pick.some(Object.values(conditions), pick.whole(1, 3));
  return Object.fromEntries(
    some.map(({ name, range: { min, max } }) => {
      const between = min * (max / min) ** pick.between(0, 1);
      const plain = name.endsWith('Temperature') ? pick.whole(200, 1500) : between;
      return [name, pick.one([plain, plain, plain, between, min, max])];
    }),
  );
}

function dataOf(pick: Pick, pool: string[]): SearchCase['data'] {
  const kind = pick.one(['project', 'project', 'project', 'twins', 'invented', 'varied'] as const);
  if (kind === 'project' || pool.length < 2) return 'project';
  if (kind === 'invented') return { invented: pick.whole(1, 1e6) };
  if (kind === 'varied') return { varied: pick.whole(1, 1e6) };
  const [original, ...twins] = pick.some(pool, pick.whole(2, 3)) as [string, ...string[]];
  return { twins: Object.fromEntries(twins.map((twin) => [twin, original])) };
}

function withLets(one: SearchCase, lets: Record<string, string>): SearchCase {
  return { ...one, specification: { ...one.specification, lets } };
}

/** What a search has of one's own: the columns, and in four of ten cases a formula or two, the second naming the first. */
function ownQuantitiesOf(
  pick: Pick,
  bare: SearchCase,
  number: number,
): { ids: string[]; lets: Record<string, string> | null } {
  const columns = (bare.columns ?? []).map(({ id }) => id);
  if (!pick.chance(0.4)) return { ids: columns, lets: null };
  const values = gridValues(bare, ids, number);
  const scaleOf = (id: string) => {
    const list = values.get(id)!;
    const middle = Math.abs(list[Math.floor(list.length / 2)] ?? 1);
    return Number((middle > 0 ? middle : 1).toPrecision(2));
  };
  const lets: Record<string, string> = {};
  for (const name of ['merit', 'further'].slice(0, pick.one([1, 1, 1, 2]))) {
    const text = randomFormula(pick, scaleOf, [...columns, ...Object.keys(lets)]);
    if (canBeRead({ ...lets, [name]: text }, bare)) lets[name] = text;
  }
  const names = Object.keys(lets);
  return { ids: [...columns, ...names], lets: names.length > 0 ? lets : null };
}

/** Formulas of formulas can grow beyond what is read, and parts of them without a name may have no value. */
function canBeRead(lets: Record<string, string>, { columns = [] }: SearchCase): boolean {
  try {
    ownQuantities({ columns, lets });
    return true;
  } catch {
    return false;
  }
}
