import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { factsFor, parseAlloy, symbols } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  compounds,
  demixing,
  kappaMargin,
  kingPhi,
  lateQuantities,
  lateValuesOf,
  novelty,
  ordering,
} from '../../src/index.ts';
import { alloys, facts, turned, withoutPair } from '../fixtures/alloys.ts';

const ids = lateQuantities.map(({ id }) => id);

test('their ids are their own, and are all there', () => {
  expect(ids).toEqual([
    'demixingTemperature',
    'demixingRatio',
    'orderingTemperature',
    'orderingRatio',
    'hullDistance',
    'kingPhi',
    'kappaMargin',
    'nearestDistance',
  ]);
  expect(quantities.filter(({ id }) => ids.includes(id))).toEqual([]);
});

describe.each(lateQuantities)('$id', (quantity) => {
  test('says what it is, from where, and how far to trust it', () => {
    expect(quantity.name).toMatch(/^[A-Z][a-z]/);
    expect(quantity.symbol).not.toBe('');
    expect(['', 'K', 'kJ/mol']).toContain(quantity.unit);
    expect(quantity.meaning).toMatch(/^[A-Z].*\.$/s);
    expect(quantity.caution).toMatch(/^[A-Z].*\.$/s);
    expect(quantity.source.where).not.toBe('');
    expect(quantity.notation).not.toBe('');
    expect(quantity.decimals).toBeGreaterThanOrEqual(0);
  });

  test('does not depend on the order of the elements or on the total, and is finite or null', () => {
    fc.assert(
      fc.property(alloys(undefined, { least: 1 }), (alloy) => {
        const scaled = Object.fromEntries(
          Object.entries(alloy).map(([symbol, amount]) => [symbol, 7 * amount]),
        );
        const [value, other, third] = [alloy, turned(alloy), scaled].map((one) =>
          quantity.compute(one, facts, {}),
        );
        expect(other).toBe(value);
        if (value === null) expect(third).toBeNull();
        else {
          expect(Number.isFinite(value)).toBe(true);
          expect(Math.abs(third! - value!)).toBeLessThan(1e-8 * Math.max(1, Math.abs(value!)));
        }
      }),
      { numRuns: 40 },
    );
  });

  test('is the same from facts of the alloy alone', () => {
    const alloy = parseAlloy('AlCoCrFeNi');
    expect(quantity.compute(alloy, factsFor(Object.keys(alloy)), {})).toBe(
      quantity.compute(alloy, facts, {}),
    );
  });
});

test('each is the number that its part works out', () => {
  const alloy = parseAlloy('AlCoCrCuFeNi');
  const conditions = { annealTemperature: 1100 };
  expect(lateValuesOf(alloy, facts, undefined, conditions)).toEqual({
    demixingTemperature: demixing(alloy, facts)!.temperature,
    demixingRatio: demixing(alloy, facts)!.ratioToMelting,
    orderingTemperature: ordering(alloy, facts)!.temperature,
    orderingRatio: ordering(alloy, facts)!.ratioToMelting,
    hullDistance: compounds(alloy, facts, conditions)!.hullDistance,
    kingPhi: kingPhi(alloy, facts),
    kappaMargin: kappaMargin(alloy, facts, conditions),
    nearestDistance: novelty(alloy),
  });
});

test('what never separates or orders has 0 K, so that a limit from above keeps it', () => {
  const never = lateValuesOf(parseAlloy('NbTa'), facts);
  expect(never).toMatchObject({
    demixingTemperature: 0,
    demixingRatio: 0,
    orderingTemperature: 0,
    orderingRatio: 0,
  });
});

test('what data lack for is null', () => {
  const values = lateValuesOf(parseAlloy('AlNi'), withoutPair('Al', 'Ni'));
  for (const id of ids.filter((one) => one !== 'nearestDistance')) expect(values[id], id).toBeNull();
  expect(lateValuesOf(parseAlloy('CFe'), facts, ['demixingRatio', 'orderingRatio'])).toEqual({
    demixingRatio: null,
    orderingRatio: null,
  });
});

test('every element but carbon, which has no melting temperature, has all of them', () => {
  for (const a of symbols.filter((symbol) => symbol !== 'C')) {
    const values = lateValuesOf({ Fe: 1, Ti: 1, [a]: 1 }, facts);
    expect(Object.values(values), a).not.toContain(null);
  }
});

test('the README lists each of them and no other', () => {
  const text = readFileSync(join(import.meta.dirname, '../../README.md'), 'utf8');
  const rows = [...text.matchAll(/^\| (`\w+`(?:, `\w+`)*) +\|/gm)].flatMap(([, names]) =>
    names!.replaceAll('`', '').split(', '),
  );
  expect(rows).toEqual(ids);
});
