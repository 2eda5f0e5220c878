import type { SearchSpecification } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { candidateAt, gridOf, prepare, scoreReference } from '../src/index.ts';
import { wholeChunk } from './fixtures/chunks.ts';
import { everyPoint, type PlainPoint } from './fixtures/everyPoint.ts';
import { planOf } from './fixtures/plans.ts';
import { specificationWith } from './fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'];
const facts = factsFor(pool);

/** VEC (valence electrons per atom) times 100, from the data and at.%: whole numbers, hence exact. */
function electrons({ symbols, amounts }: PlainPoint): number {
  return symbols.reduce(
    (sum, symbol, at) => sum + facts.columns.valenceElectrons![pool.indexOf(symbol)]! * amounts[at]!,
    0,
  );
}

const search = specificationWith({
  elements: { pool, require: ['Fe'], forbid: [] },
  components: { min: 2, max: 4 },
  fractions: { step: 10, min: 10, max: 100, each: { Al: { max: 20 } } },
  // Lattice values: many points lie exactly on both.
  limits: [{ quantity: 'valenceElectronConcentration', min: 7, max: 8 }],
  keep: 25,
});

test.each([
  ['high', (sum: number) => -sum],
  ['low', (sum: number) => sum],
  [{ target: 7.5 }, (sum: number) => Math.abs(sum - 750)],
] as const)(
  'counts and the best by %o are those of plain enumeration, ties by composition',
  (prefer, key) => {
    const rank = [{ quantity: 'valenceElectronConcentration', prefer }];
    const specification: SearchSpecification = { ...search, rank: [...rank] };
    const passing = everyPoint(specification).filter(
      (point) => electrons(point) >= 700 && electrons(point) <= 800,
    );
    // Sorting is stable, and plain enumeration goes by composition.
    const best = passing.toSorted((one, other) => key(electrons(one)) - key(electrons(other))).slice(0, 25);

    const prepared = prepare(planOf(specification));
    const outcome = scoreReference(prepared, wholeChunk(prepared), { cutOff: null })!;
    expect(outcome.points).toBe(everyPoint(specification).length);
    expect([outcome.passed, outcome.passedEach]).toEqual([passing.length, [passing.length]]);
    expect(compositionsOf(specification, outcome.best)).toEqual(
      best.map(({ symbols, amounts }) => [symbols, amounts]),
    );
  },
);

test('the best of each system are kept beside the best of all, systems by their best point', () => {
  const specification = {
    ...search,
    keep: 0,
    keepPerSystem: 2,
    rank: [{ quantity: 'valenceElectronConcentration', prefer: 'high' as const }],
  };
  const passing = everyPoint(specification).filter(
    (point) => electrons(point) >= 700 && electrons(point) <= 800,
  );
  const groups = Object.values(Object.groupBy(passing, ({ symbols }) => symbols.join()))
    .map((group) => group!.toSorted((one, other) => electrons(other) - electrons(one)).slice(0, 2))
    .sort((one, other) => electrons(other[0]!) - electrons(one[0]!));

  const prepared = prepare(planOf(specification));
  const outcome = scoreReference(prepared, wholeChunk(prepared), { cutOff: null })!;
  expect(outcome.best).toHaveLength(0);
  expect(compositionsOf(specification, outcome.bestOfSystems)).toEqual(
    groups.flat().map(({ symbols, amounts }) => [symbols, amounts]),
  );
});

test('points without a value fail, are counted by quantity, and rank last', () => {
  // A pure element has no Ω.
  const specification = specificationWith({
    components: { min: 1, max: 2 },
    fractions: { step: 50, min: 50, max: 100, each: {} },
    limits: [{ quantity: 'omega', min: 0 }],
    rank: [{ quantity: 'density', prefer: 'low' }],
  });
  const prepared = prepare(planOf(specification));
  const limited = scoreReference(prepared, wholeChunk(prepared), { cutOff: null })!;
  expect(limited).toMatchObject({ points: 15, passed: 10, passedEach: [10], outside: { omega: 5 } });

  const ranked = prepare(
    planOf({ ...specification, limits: [], rank: [{ quantity: 'omega', prefer: 'high' }] }),
  );
  const { best, outside } = scoreReference(ranked, wholeChunk(ranked), { cutOff: null })!;
  expect(outside).toEqual({});
  expect(compositionsOf(specification, best.slice(-15)).map(([symbols]) => symbols)).toEqual(
    ['Al', 'Co', 'Cr', 'Fe', 'Ni'].map((symbol) => [symbol]),
  );
  expect(Array.from(best.slice(-15)).filter(Number.isNaN)).toHaveLength(5);
});

function compositionsOf(specification: SearchSpecification, ranked: Float64Array): [string[], number[]][] {
  const grid = gridOf(specification);
  return Array.from({ length: ranked.length / 3 }, (_, at) => {
    const { symbols, composition } = candidateAt(grid, ranked[3 * at + 1]!, ranked[3 * at + 2]!);
    return [symbols, symbols.map((symbol) => Math.round(composition[symbol]! * 1e9) / 1e9)];
  });
}
