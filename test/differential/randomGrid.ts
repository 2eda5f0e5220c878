import type { SearchSpecification } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { countPoints, gridOf } from '@tiegel/engine';
import type { Pick as Choices } from './pick.ts';

export type GridPart = Pick<SearchSpecification, 'elements' | 'components' | 'fractions'>;

/** Elements that searches are about; others come in now and then. */
const common = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Si', 'Ta', 'Ti', 'V', 'W', 'Zr'];
const steps = [1, 2, 2.5, 4, 5, 10, 20, 25, 50];

/** Where a grid is not like the others. */
export type GridKind =
  | 'any'
  | 'one huge system'
  | 'tiny'
  | 'equimolar'
  | 'own bounds'
  | 'large'
  /** Steps below 1 at.% */
  | 'fine'
  /** Eight to ten elements at once */
  | 'many components'
  /** Forty elements or more to choose from */
  | 'wide pool'
  /** Every element has to be there, its amount nearly or wholly given */
  | 'forced'
  /** More systems than keep the best of each */
  | 'many systems'
  /** Far more points than can be gone through: of a part of a system its cases are */
  | 'huge';

interface Shape {
  points: { least: number; most: number };
  components: { least: number; most: number };
  /** How many elements there are to choose from, at most. */
  pool: number;
  steps: readonly number[];
}

const usual: Shape = {
  points: { least: 2, most: 6000 },
  components: { least: 1, most: 7 },
  pool: 9,
  steps,
};

const shapes: Record<GridKind, Shape> = {
  any: usual,
  'one huge system': {
    ...usual,
    points: { least: 12_000, most: 40_000 },
    components: { least: 3, most: 7 },
    steps: [1, 2, 2.5],
  },
  tiny: { ...usual, points: { least: 1, most: 12 } },
  equimolar: { ...usual, points: { least: 1, most: 5000 } },
  'own bounds': { ...usual, points: { least: 20, most: 6000 } },
  large: { ...usual, points: { least: 20_000, most: 60_000 } },
  fine: { ...usual, components: { least: 2, most: 4 }, steps: [0.1, 0.2, 0.25, 0.5] },
  'many components': { ...usual, components: { least: 8, most: 10 }, pool: 11, steps: [2, 2.5, 4, 5, 10] },
  'wide pool': { ...usual, components: { least: 1, most: 3 }, pool: 60, steps: [10, 20, 25, 50] },
  forced: { ...usual, points: { least: 1, most: 500 }, steps: [0.1, 0.25, ...steps] },
  'many systems': {
    ...{ points: { least: 100_001, most: 400_000 }, components: { least: 4, most: 4 } },
    ...{ pool: 48, steps: [20, 25] },
  },
  huge: {
    ...{ points: { least: 1e8, most: 2 ** 53 - 1 }, components: { least: 4, most: 8 } },
    ...{ pool: 14, steps: [0.1, 0.2, 0.25, 0.5, 1, 2] },
  },
};

/** A grid with about as many points as its kind has. */
export function randomGrid(pick: Choices, kind: GridKind): GridPart {
  const { least, most } = shapes[kind].points;
  for (;;) {
    const part = gridPart(pick, kind);
    const points = countPoints(gridOf(withGrid(part)));
    if (points >= least && points <= most) return part;
  }
}

/** Parts of a specification around a grid that do not matter to it. */
export function withGrid(part: GridPart): SearchSpecification {
  return {
    ...{ version: 1, name: 'grid', limits: [], keep: 1, keepPerSystem: 0, tally: 'each' },
    rank: [{ quantity: 'density', prefer: 'low' }],
    ...part,
  };
}

function gridPart(pick: Choices, kind: GridKind): GridPart {
  const shape = shapes[kind];
  const { least, most } = shape.components;
  const min = pick.whole(least, most);
  const single = kind === 'one huge system' || kind === 'forced';
  const fewest = { 'wide pool': 40, 'many systems': 42, huge: 12 } as Partial<Record<GridKind, number>>;
  const max = single ? min : pick.whole(min, Math.min(most, min + 2));
  const wanted = single ? min : pick.whole(fewest[kind] ?? min, shape.pool);
  const pool = pick.some(shape.pool > common.length || pick.chance(0.15) ? symbols : common, wanted);
  const require =
    kind === 'forced' && pick.chance(0.5) ? pool : pick.chance(0.2) ? pick.some(pool, pick.whole(1, 2)) : [];
  const forbid = single || pick.chance(0.85) ? [] : pick.some(pool, 1);
  const elements = { pool, require, forbid: forbid.filter((one) => !require.includes(one)) };
  return { elements, components: { min, max }, fractions: fractionsOf(pick, kind, pool) };
}

function fractionsOf(pick: Choices, kind: GridKind, pool: string[]): SearchSpecification['fractions'] {
  const mayBeEquimolar = kind === 'wide pool' || kind === 'many systems';
  if (kind === 'equimolar' || (mayBeEquimolar && pick.chance(0.4))) return 'equimolar';
  const step = pick.one(shapes[kind].steps);
  const bounds = () => {
    const [one, other] = [pick.whole(1, 100 / step), pick.whole(1, 100 / step)];
    return { min: Math.min(one, other) * step, max: Math.min(100, Math.max(one, other) * step) };
  };
  const wide = { min: step, max: 100 };
  if (kind === 'forced') return { step, ...wide, each: givenAmounts(pick, pool, step) };
  const common = pick.chance(0.5) ? wide : pick.chance(0.5) ? { min: 5, max: 35 } : bounds();
  const bounded = kind === 'own bounds' ? pool : pick.chance(0.2) ? pick.some(pool, 2) : [];
  return { step, ...common, each: Object.fromEntries(bounded.map((symbol) => [symbol, bounds()])) };
}

/** Bounds about an amount of each element that together make the whole: no room at all for some, a little for others. */
function givenAmounts(
  pick: Choices,
  pool: string[],
  step: number,
): Record<string, { min: number; max: number }> {
  const whole = Math.round(100 / step);
  let left = whole - pool.length;
  return Object.fromEntries(
    pool.map((symbol, at) => {
      const more = at === pool.length - 1 ? left : pick.whole(0, Math.max(0, left));
      left -= more;
      const [below, above] = [pick.one([0, 0, 1, 2]), pick.one([0, 0, 1, 3])];
      const least = Math.max(1, 1 + more - below);
      const most = Math.min(whole, Math.max(least, 1 + more + above));
      return [symbol, { min: least * step, max: Math.min(100, most * step) }];
    }),
  );
}
