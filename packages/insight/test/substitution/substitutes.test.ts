import { ProblemError } from '@tiegel/contract';
import { demoPrices, factsFor, formatComposition, parseAlloy, symbols } from '@tiegel/elements';
import { columnsOf, quantities, quantityById, valuesOf } from '@tiegel/screening';
import { describe, expect, test } from 'vitest';
import { demixing, substitutes, substitutesTrust } from '../../src/index.ts';
import { typicalSpread } from '../../src/substitution/typicalSpread.ts';
import { facts } from '../fixtures/alloys.ts';

const cantor = parseAlloy('CoCrFeMnNi');
const priced = factsFor(symbols, { prices: demoPrices });
const names = (items: readonly { composition: Record<string, number> }[]) =>
  items.map(({ composition }) => formatComposition(composition));

describe('by default', () => {
  const items = substitutes(cantor, { replace: 'Co', facts: priced });
  const classic = ['density', 'meltingTemperature', 'allenElectronegativitySpread', 'cost'];

  test('every element with complete data comes, alone, for all of it and for half', () => {
    // 56 elements but cobalt, carbon without a melting temperature, and the twelve without an Allen value.
    expect(substitutes(cantor, { replace: 'Co', facts: priced, quantities: classic })).toHaveLength(
      2 * (56 - 1 - 1 - 12),
    );
    expect(names(items)).toContain('Cr20Fe20Mn20Ni40');
    expect(names(items)).toContain('Co10Cr20Fe20Mn20Ni30');
    expect(items.every(({ by }) => Object.keys(by).length === 1)).toBe(true);
    expect(items.some(({ by }) => 'C' in by || 'Ce' in by)).toBe(false);
  });

  test('values, changes, cost and demixing are those of the new alloy', () => {
    const item = items.find(({ composition }) => formatComposition(composition) === 'Cr20Fe20Mn20Ni40')!;
    const [before, after] = [cantor, item.composition].map((alloy) => valuesOf(alloy, priced));
    expect(item).toMatchObject({ replaced: { Co: 20 }, by: { Ni: 20 }, phase: null, limits: [] });
    expect(item.quantities).toEqual(after);
    expect(item.changes.density).toBe(after!.density! - before!.density!);
    expect(item.cost).toBe(after!.cost);
    expect(item.cost).toBeLessThan(before!.cost!);
    expect(item.demixing).toEqual(demixing(item.composition, priced));
  });

  // Neighbours of cobalt against hafnium, whose atoms are a quarter larger.
  test('the most alike come first: iron and nickel long before hafnium', () => {
    const scores = items.map(({ score }) => score!);
    expect(scores).toEqual(scores.toSorted((a, b) => a - b));
    expect(scores[0]).toBeGreaterThan(0);
    expect(scores.at(-1)).toBeLessThanOrEqual(1);
    const place = (symbol: string) => items.findIndex(({ by }) => by[symbol] === 20);
    expect(place('Fe')).toBeLessThan(place('Hf') / 4);
    expect(place('Ni')).toBeLessThan(place('Hf') / 4);
  });

  test('unlikeness is the mean change in typical spreads, each held at three, as a third of that', () => {
    const counted = quantities
      .map(({ id }) => id)
      .filter((id) => !columnsOf(quantityById(id)).elements.includes('price'));
    const spread = typicalSpread(counted);
    const hafnium = items.find(({ by }) => by.Hf === 20)!;
    const parts = counted
      .filter((id) => spread[id] !== null && valuesOf(cantor, priced, [id])[id] !== null)
      .map((id) => Math.min(3, Math.abs(hafnium.changes[id] ?? Number.POSITIVE_INFINITY) / spread[id]!));
    expect(parts.filter((part) => part === 3).length).toBeGreaterThan(3);
    expect(hafnium.score).toBeCloseTo(parts.reduce((sum, part) => sum + part, 0) / (3 * parts.length), 12);
  });

  test('prices take no part in the likeness', () => {
    const unpriced = substitutes(cantor, { replace: 'Co', facts });
    expect(names(unpriced)).toEqual(names(items));
    expect(unpriced[0]!.cost).toBeNull();
    expect(unpriced[0]!.changes.cost).toBeNull();
  });
});

test('a partner that is named twice comes once', () => {
  const twice = substitutes(cantor, { replace: 'Co', with: ['Ni', 'Ni'], shares: [1], facts });
  expect(twice.map(({ by }) => by)).toEqual([{ Ni: 20 }]);
  const three = substitutes(cantor, { replace: 'Co', with: ['Ni', 'Cu', 'Ni'], shares: [1], facts });
  expect(three.map(({ by }) => by)).toContainEqual({ Ni: 10, Cu: 10 });
});

test('partners that are named come alone and together, with the shares asked for', () => {
  const items = substitutes(cantor, { replace: 'Co', with: ['Ni', 'Cu'], shares: [1], facts });
  expect(names(items).sort()).toEqual(['Cr20Cu10Fe20Mn20Ni30', 'Cr20Cu20Fe20Mn20Ni20', 'Cr20Fe20Mn20Ni40']);
});

test('a partner that is named is tried although data lack; what lacks is null and counts as unlike', () => {
  const [item] = substitutes(cantor, { replace: 'Co', with: ['C'], shares: [1], facts });
  expect(item!.quantities.meltingTemperature).toBeNull();
  expect(item!.changes.meltingTemperature).toBeNull();
  expect(item!.score).toBeGreaterThan(0.3);
});

test('those that keep every limit come first, and a limit without a value is not kept', () => {
  const limits = [
    { quantity: 'density', max: 7.5 },
    { quantity: 'meltingTemperature', min: 1500 },
  ];
  const items = substitutes(cantor, { replace: 'Co', with: ['Al', 'Ti', 'Ni', 'W', 'C'], facts, limits });
  const keeps = items.map((item) => item.limits.every(Boolean));
  expect(keeps).toContain(true);
  expect(keeps).toEqual(keeps.toSorted((a, b) => Number(b) - Number(a)));
  expect(items.find(({ by }) => by.C === 20)!.limits[1]).toBeNull();
  for (const {
    limits: [kept],
    quantities,
  } of items)
    expect(kept).toBe(quantities.density! <= 7.5);
});

test('what lies outside the space of a search is told in words and comes behind, however alike', () => {
  const space = {
    elements: { pool: ['Al', 'Cr', 'Cu', 'Fe', 'Mn', 'Ni'], require: ['Cr'], forbid: ['Co'] },
    components: { min: 4, max: 5 },
    fractions: { step: 5, min: 5, max: 35, each: {} },
  };
  const asked = { replace: 'Co', with: ['Al', 'Cu', 'Ni'], facts };
  const items = substitutes(cantor, { ...asked, space });
  const reasons = (name: string) =>
    items.find(({ composition }) => formatComposition(composition) === name)!.outsideSpace;
  expect(reasons('Cr20Cu20Fe20Mn20Ni20')).toEqual([]);
  expect(reasons('Cr20Fe20Mn20Ni40')).toEqual(['Ni 40 at.%, at most 35']);
  expect(reasons('Co10Cr20Cu10Fe20Mn20Ni20')).toEqual(['Co is forbidden', '6 elements, at most 5']);
  const inside = items.map(({ outsideSpace }) => outsideSpace.length === 0);
  expect(inside).toEqual(inside.toSorted((a, b) => Number(b) - Number(a)));
  expect(items[0]!.score).toBeGreaterThan(Math.min(...items.map(({ score }) => score!)));

  const limits = [{ quantity: 'valenceElectronConcentration', min: 8 }];
  const both = substitutes(cantor, { ...asked, space, limits }).map(
    (item) => [item.limits[0], item.outsideSpace.length === 0] as const,
  );
  const classes = both.map(([kept, lies]) => (kept ? (lies ? 0 : 1) : 2));
  expect(new Set(classes)).toEqual(new Set([0, 1, 2]));
  expect(classes).toEqual(classes.toSorted());
  expect(substitutes(cantor, asked).every(({ outsideSpace }) => outsideSpace.length === 0)).toBe(true);
});

test('a ranking of the caller orders, high or low, and comes without likeness', () => {
  const rank = { score: ({ density }: Record<string, number | null>) => density ?? null };
  const low = substitutes(cantor, {
    replace: 'Co',
    facts,
    quantities: ['density'],
    rank: { ...rank, better: 'low' },
  });
  const high = substitutes(cantor, {
    replace: 'Co',
    facts,
    quantities: ['density'],
    rank: { ...rank, better: 'high' },
  });
  const densities = low.map(({ quantities }) => quantities.density!);
  expect(densities).toEqual(densities.toSorted((a, b) => a - b));
  expect(high.map(({ quantities }) => quantities.density)).toEqual(densities.toReversed());
  expect(high[0]!.score).toBe(high[0]!.quantities.density);
});

test('what the ranking gives no number stands last', () => {
  const score = ({ meltingTemperature }: Record<string, number | null>) => meltingTemperature ?? null;
  const items = substitutes(cantor, {
    replace: 'Co',
    with: ['C', 'Ni'],
    facts,
    rank: { score, better: 'high' },
  });
  const scores = items.map((item) => item.score);
  expect(scores.indexOf(null)).toBe(scores.filter((one) => one !== null).length);
});

test('a phase estimate stands beside every result', () => {
  const items = substitutes(cantor, {
    replace: 'Co',
    with: ['Ni'],
    facts,
    phase: (composition) => Object.keys(composition).length,
  });
  expect(items.map(({ phase }) => phase).sort()).toEqual([4, 5]);
});

test('quantities and conditions can be chosen', () => {
  const [item] = substitutes(cantor, { replace: 'Co', with: ['Ni'], facts, quantities: ['density'] });
  expect(Object.keys(item!.quantities)).toEqual(['density']);
  expect(Object.keys(item!.changes)).toEqual(['density']);
});

describe('refused with every fault at once', () => {
  const faultsOf = (replace: string, partners?: string[]) => {
    try {
      substitutes(cantor, { replace, facts, ...(partners ? { with: partners } : {}) });
    } catch (error) {
      if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => [code, pointer]);
    }
    return [];
  };

  test('an element that the alloy does not hold', () => {
    expect(faultsOf('Cu')).toEqual([['substitute/absent', '/replace']]);
  });

  test('itself, unknown symbols and symbols without data', () => {
    expect(faultsOf('Co', ['Co', 'Xx', 'Kr'])).toEqual([
      ['substitute/itself', '/with/0'],
      ['element/unknown', '/with/1'],
      ['element/no-data', '/with/2'],
    ]);
    expect(faultsOf('Qq')).toEqual([['element/unknown', '/replace']]);
  });
});

test('the table says what it does not know', () => {
  expect(substitutesTrust).toContain('random solution');
});
