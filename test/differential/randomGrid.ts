import type { SearchSpecification } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { countPoints, gridOf } from '@tiegel/engine';
import type { Pick as Choices } from './pick.ts';

export type GridPart = Pick<SearchSpecification, 'elements' | 'components' | 'fractions'>;

/** Elements that searches are about; others come in now and then. */
const common = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Si', 'Ta', 'Ti', 'V', 'W', 'Zr'];
const steps = [1, 2, 2.5, 4, 5, 10, 20, 25, 50];

/** Where a grid is not like the others. */
export type GridKind = 'any' | 'one huge system' | 'tiny' | 'equimolar' | 'own bounds' | 'large';

const sizes: Record<GridKind, { least: number; most: number }> = {
  any: { least: 2, most: 6000 },
  'one huge system': { least: 12_000, most: 40_000 },
  tiny: { least: 1, most: 12 },
  equimolar: { least: 1, most: 5000 },
  'own bounds': { least: 20, most: 6000 },
  large: { least: 20_000, most: 60_000 },
};

/** A grid of one to seven components with about as many points as its kind has. */
export function randomGrid(pick: Choices, kind: GridKind): GridPart {
  for (;;) {
    const part = gridPart(pick, kind);
    const points = countPoints(gridOf(withGrid(part)));
    if (points >= sizes[kind].least && points <= sizes[kind].most) return part;
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
  const min = pick.whole(kind === 'one huge system' ? 3 : 1, 7);
  const max = kind === 'one huge system' ? min : pick.whole(min, Math.min(7, min + 2));
  const wanted = kind === 'one huge system' ? min : pick.whole(min, 9);
  const pool = pick.some(pick.chance(0.15) ? symbols : common, wanted);
  const require = pick.chance(0.2) ? pick.some(pool, pick.whole(1, 2)) : [];
  const forbid = kind === 'one huge system' || pick.chance(0.85) ? [] : pick.some(pool, 1);
  const elements = { pool, require, forbid: forbid.filter((one) => !require.includes(one)) };
  return { elements, components: { min, max }, fractions: fractionsOf(pick, kind, pool) };
}

function fractionsOf(pick: Choices, kind: GridKind, pool: string[]): SearchSpecification['fractions'] {
  if (kind === 'equimolar') return 'equimolar';
  const step = pick.one(kind === 'one huge system' ? [1, 2, 2.5] : steps);
  const bounds = () => {
    const [one, other] = [pick.whole(1, 100 / step), pick.whole(1, 100 / step)];
    return { min: Math.min(one, other) * step, max: Math.max(one, other) * step };
  };
  const wide = { min: step, max: 100 };
  const common = pick.chance(0.5) ? wide : pick.chance(0.5) ? { min: 5, max: 35 } : bounds();
  const bounded = kind === 'own bounds' ? pool : pick.chance(0.2) ? pick.some(pool, 2) : [];
  return { step, ...common, each: Object.fromEntries(bounded.map((symbol) => [symbol, bounds()])) };
}
