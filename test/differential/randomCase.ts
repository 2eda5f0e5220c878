import type { FrontEntry, Limit, RankEntry, SearchSpecification } from '@tiegel/contract';
import { countPoints, gridOf } from '@tiegel/engine';
import { ownQuantity, quantities } from '@tiegel/screening';
import { gridValues } from './gridValues.ts';
import { type Pick, pickFrom } from './pick.ts';
import { randomFormula } from './randomFormula.ts';
import { type GridKind, randomGrid, withGrid } from './randomGrid.ts';
import type { SearchCase } from './searchCase.ts';

const ids = quantities.map(({ id }) => id);
/** Every so-manieth search asks for a Pareto front, too. */
const frontEvery = 9;
const kinds: readonly GridKind[] = [
  ...(['any', 'any', 'any', 'any', 'own bounds', 'tiny', 'equimolar', 'any', 'own bounds'] as const),
  ...(['any', 'any', 'one huge system', 'any', 'own bounds', 'any', 'large'] as const),
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
    pointsPerChunk: Math.ceil(Number(countPoints(gridOf(withGrid(grid)))) / pick.whole(1, 20)),
  };
  const limited = [
    ids[number % ids.length]!,
    ...pick.some(ids, pick.one([0, 0, 1, 1, 2, 2, 3, kind === 'tiny' ? 9 : 4])),
  ];
  const ranked = [
    ids[(number * 5 + 3) % ids.length]!,
    ...(pick.chance(0.6) ? [] : pick.some(ids, pick.whole(1, 3))),
  ];
  const asked = [...new Set([...limited, ...ranked])];
  const values = gridValues(bare, asked, number);
  const own = ownFormula(pick, bare, number);
  if (own) values.set('merit', gridValues(withLets(bare, own), ['merit'], number).get('merit')!);
  if (own && pick.chance(0.5)) limited.push('merit');
  else if (own) ranked[0] = 'merit';
  const specification: SearchSpecification = {
    ...bare.specification,
    name: `${number}: ${kind}, ${limited[0]}, ${ranked[0]}`,
    limits: [...new Set(limited)].flatMap((id) => limitsOf(pick, id, values.get(id)!)),
    rank: rankOf(pick, [...new Set(ranked)], values),
    ...(own ? { lets: { merit: own } } : {}),
    ...(pick.chance(0.15) ? { conditions: { serviceTemperature: pick.whole(200, 1500) } } : {}),
    keep: pick.one([1, 5, 5, 40, 40, 300, 1000, 0]),
    keepPerSystem: pick.one([0, 0, 0, 1, 3]),
  };
  if (number % frontEvery === 5) specification.front = frontOf(pick);
  return { ...bare, specification };
}

function frontOf(pick: Pick): FrontEntry[] {
  const prefer = () => pick.one(['high', 'low'] as const);
  return pick.some(ids, pick.whole(2, 4)).map((quantity) => ({ quantity, prefer: prefer() }));
}

function dataOf(pick: Pick, pool: string[]): SearchCase['data'] {
  const kind = pick.one(['project', 'project', 'project', 'twins', 'invented'] as const);
  if (kind === 'project' || pool.length < 2) return 'project';
  if (kind === 'invented') return { invented: pick.whole(1, 1e6) };
  const [original, ...twins] = pick.some(pool, pick.whole(2, 3)) as [string, ...string[]];
  return { twins: Object.fromEntries(twins.map((twin) => [twin, original])) };
}

function withLets(one: SearchCase, merit: string): SearchCase {
  return { ...one, specification: { ...one.specification, lets: { merit } } };
}

/** In three of ten cases a formula of one's own. */
function ownFormula(pick: Pick, bare: SearchCase, number: number): string | null {
  if (!pick.chance(0.3)) return null;
  const values = gridValues(bare, ids, number);
  const scaleOf = (id: string) => {
    const list = values.get(id)!;
    const middle = Math.abs(list[Math.floor(list.length / 2)] ?? 1);
    return Number((middle > 0 ? middle : 1).toPrecision(2));
  };
  const formula = randomFormula(pick, scaleOf);
  return isShort(formula) ? formula : null;
}

/** Formulas of formulas can grow beyond what is read. */
function isShort(formula: string): boolean {
  try {
    ownQuantity('merit', formula, quantities);
    return true;
  } catch {
    return false;
  }
}

/** A limit or two, mostly such that some points meet it: anywhere, on a point's own value, or at the edge of what counts as on it. */
function limitsOf(pick: Pick, quantity: string, values: readonly number[]): Limit[] {
  const edge = (share: number) => {
    const at = values[Math.floor(share * (values.length - 1))] ?? pick.between(-10, 10);
    const next = pick.one([0, 0, 1e-12, -1e-12, 1.000001e-12, -0.999999e-12, null]);
    return next === null ? Number(at.toPrecision(3)) : at + next * Math.max(1, Math.abs(at));
  };
  const sides = pick.one(['min', 'max', 'both', 'both', 'equal']);
  const [low, high] = [edge(pick.between(0, 0.4)), edge(pick.between(0.5, 1))];
  if (sides === 'equal' && pick.chance(0.3)) return [{ quantity, min: low, max: low }];
  return [
    {
      quantity,
      ...(sides === 'max' ? {} : { min: Math.min(low, high) }),
      ...(sides === 'min' ? {} : { max: Math.max(low, high) }),
    },
  ];
}

function rankOf(pick: Pick, ranked: string[], values: ReadonlyMap<string, readonly number[]>): RankEntry[] {
  const [first] = ranked as [string];
  if (ranked.length === 1) {
    const list = values.get(first)!;
    const target = list[Math.floor(list.length / 3)] ?? 1;
    return [{ quantity: first, prefer: pick.one(['high', 'low', 'high', 'low', { target }] as const) }];
  }
  return ranked.map((quantity): RankEntry => {
    const list = values.get(quantity)!;
    const [low, high] = [list[0] ?? 0, list.at(-1) ?? 1];
    const reach = high > low ? high - low : 1;
    const shaped = {
      ...(pick.chance(0.4) ? { weight: pick.one([0.3, 2, 3]) } : {}),
      ...(pick.chance(0.4) ? { shape: pick.one([0.5, 2]) } : {}),
    };
    if (pick.chance(0.25)) {
      return { quantity, prefer: { target: low + reach / 3 }, within: reach * 0.8, ...shaped };
    }
    const from = low + reach * pick.between(-0.3, 0.3);
    return { quantity, prefer: pick.one(['high', 'low']), from, to: from + reach, ...shaped };
  });
}
