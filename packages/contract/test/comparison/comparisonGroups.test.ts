import { expect, test } from 'vitest';
import {
  type ComparedAlloy,
  type ComparedQuantity,
  type Comparison,
  comparisonGroups,
  onlyDifferent,
  toldOnce,
} from '../../src/index.ts';

// Invented alloys and values: what is tested are lines and their order, no numbers of the trade.
const explanation = (singleSolution: number | null, met: boolean | null) =>
  ({
    criteria: { rule: met, second: met },
    phase: { singleSolution, basis: singleSolution === null ? 'none' : 'ok', likely: ['fcc'] },
    ...{ compounds: null, demixing: { temperature: 500 }, ordering: null, nearest: [] },
  }) as const;
const record = { id: 'rule', name: 'A rule', positiveClass: 'one solution', predictsSecondPhase: false };
const alloy = (Ni: number, density: number, told: ComparedAlloy['explanation']) => ({
  ...{ composition: { Co: 100 - Ni, Ni }, density, explanation: told },
});
type Alloy = ReturnType<typeof alloy>;

const told = (...alloys: Alloy[]): Comparison<Alloy, ComparedQuantity> => ({
  alloys,
  quantities: [{ id: 'density', name: 'Density', symbol: 'ρ', unit: 'g/cm³' }],
  typical: { density: { low: 7, middle: 7.5, high: 8 } },
  criteria: [
    { ...record, predicts: 'one solution', balancedAccuracy: 0.5 },
    ...[{ ...record, id: 'second', predicts: null, predictsSecondPhase: true, balancedAccuracy: null }],
  ],
  written: (value, decimals) => value?.toFixed(decimals) ?? '–',
  cellOf: (_, { density }) => ({ value: density, text: density.toFixed(2) }),
  silence: () => '– of other alloys',
});

test('groups stand in the order of reading, those of a search behind the composition', () => {
  const asked = [
    { head: 'Limits of the search', rows: [] },
    { head: 'Expressions of the search', rows: comparisonGroups(told(alloy(50, 8, null)))[0]!.rows },
  ];
  const groups = comparisonGroups({ ...told(alloy(50, 8, explanation(0.5, true))), asked });
  expect(groups.map(({ head }) => head)).toEqual([
    'Composition, at.%',
    'Expressions of the search',
    'Phases',
    'What competes',
    'Quantities',
    'Published rules for one phase, met or not',
    'Published rules for anything else, met or not',
  ]);
});

test('each line says how much the alloys differ in it, and only those that differ can be asked for', () => {
  const groups = comparisonGroups(
    told(alloy(50, 7.99, explanation(0.9, true)), alloy(40, 8, explanation(null, null))),
  );
  const grade = Object.fromEntries(
    groups.flatMap(({ rows }) => rows.map(({ id, difference }) => [id, difference])),
  );
  expect(grade).toMatchObject({
    ...{ 'share-Co': 'unlike', likely: 'unlike', 'one-phase': 'much', demixing: 'none', density: 'little' },
    ...{ 'rule-rule': 'unlike' },
  });
  const shown = onlyDifferent(groups).flatMap(({ rows }) => rows.map(({ id }) => id));
  expect(shown).toEqual([
    ...['share-Co', 'share-Ni', 'likely', 'one-phase', 'basis', 'rule-rule', 'rule-second'],
  ]);
});

test('people are told a number that is a line and a quantity once, as the quantity in the place of the line', () => {
  const groups = comparisonGroups(told(alloy(50, 8, explanation(0.9, true))));
  const idsOf = (some: typeof groups) => some.map(({ head, rows }) => [head, rows.map(({ id }) => id)]);
  const once = toldOnce(groups, 'one-phase', 'density');
  expect(idsOf(once)).toContainEqual(['Phases', ['likely', 'density', 'basis', 'published']]);
  expect(once.map(({ head }) => head)).not.toContain('Quantities');
  expect(toldOnce(groups, 'one-phase', 'hardness')).toEqual(groups);
});

test('a rule is told with its record, with its verdict or why it gives none', () => {
  const groups = comparisonGroups(
    told(alloy(50, 8, explanation(0.9, true)), alloy(40, 8, explanation(0.9, null))),
  );
  const [rule, second] = groups.slice(-2).map(({ rows }) => rows[0]!);
  expect(rule!.name).toBe('A rule (right: 0.50)');
  expect(rule!.cells.map(({ text }) => text)).toEqual(['✓ met', '– of other alloys']);
  expect(second!.name).toBe('A rule: one solution (not tested)');
  expect(second!.cells[0]!.text).toBe('× expects one solution');
});

test('what is still awaited differs by nobody knows how much', () => {
  const rows = comparisonGroups(told(alloy(50, 8, explanation(0.9, true)), alloy(50, 8, null))).flatMap(
    ({ rows: some }) => some,
  );
  expect(rows.find(({ id }) => id === 'likely')).toMatchObject({ difference: null });
  expect(rows.find(({ id }) => id === 'hull')!.cells.map(({ text }) => text)).toEqual(['–', '…']);
});
