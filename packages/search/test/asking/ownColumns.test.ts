import { demoPrices, readOwnColumn } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { candidatesOf, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';

// Thermal conductivities at 300 K in W/(m K), CRC Handbook (from memory).
const column = readOwnColumn(
  'symbol,value,name,unit,mixing\nAl,237,Heat conduction,W/(m K),mole\nCo,100,,,\nCr,93.9,,,\nFe,80.4,,,\nNi,90.9,,,\nTi,21.9,,,\n',
);
const asked = question({
  limits: [{ quantity: 'heatConduction', min: 90 }],
  lets: { conductionByMass: 'heatConduction / density' },
  rank: [{ quantity: 'conductionByMass', prefer: 'high' }],
});

test('a column of one’s own limits and is named in expressions, and goes with the search', async () => {
  const { searches, ...program } = await laboratory({ queue: handQueue({ eager: true }) });
  searches.imports.enterColumn(column);
  expect(searches.columns()).toEqual([column]);
  const { id } = await searches.submit(asked);
  const view = await searches.finished(id);
  expect(view.state).toBe('done');
  expect(view.moreQuantities.map(({ id, unit }) => [id, unit])).toEqual([
    ['heatConduction', 'W/(m K)'],
    ['conductionByMass', 'W/(m K)/(g/cm3)'],
  ]);
  const found = candidatesOf(searches, id);
  expect(found.length).toBeGreaterThan(10);
  for (const { composition, quantities } of found) {
    const mean = Object.entries(composition).reduce(
      (sum, [symbol, share]) => sum + (share / 100) * column.values[symbol]!,
      0,
    );
    expect(quantities.heatConduction).toBeCloseTo(mean, 9);
    expect(quantities.heatConduction).toBeGreaterThanOrEqual(90);
    expect(quantities.conductionByMass).toBeCloseTo(mean / quantities.density!, 9);
  }
  // Taken out of force it stays with the search that was planned with it, after a restart too.
  searches.imports.removeColumn('heatConduction');
  expect(searches.columns()).toEqual([]);
  const later = await program.afterDeath();
  expect(candidatesOf(later.searches, id)).toEqual(found);
  expect(later.searches.view(id).moreQuantities).toEqual(view.moreQuantities);
  await expect(later.searches.size(asked)).rejects.toMatchObject({
    faults: [{ code: 'quantity/unknown' }, { code: 'expression/unknown-name' }],
  });
});

test('it changes the version of the data of those searches alone that read it', () => {
  const versionOf = (request: object, columns = [column]) =>
    checkSearch(request, { prices: demoPrices, columns }, 1e9).plan.dataVersion;
  expect(versionOf(question())).toBe(versionOf(question(), []));
  expect(versionOf(asked)).not.toBe(versionOf(question()));
  const other = { ...column, values: { ...column.values, Ni: 91 } };
  expect(versionOf(asked, [other])).not.toBe(versionOf(asked));
});

test('a value that the column lacks is named with its elements', () => {
  const { Ti: _, ...values } = column.values;
  const check = () => checkSearch(asked, { prices: null, columns: [{ ...column, values }] }, 1e9);
  expect(check).toThrow(
    expect.objectContaining({
      faults: [
        expect.objectContaining({ code: 'search/value-missing', pointer: '/limits/0/quantity' }),
        expect.objectContaining({ code: 'search/value-missing', pointer: '/rank/0/quantity' }),
      ],
    }),
  );
});

test('a name that a quantity has, and a column that is not there, are refused', async () => {
  const { searches } = await laboratory();
  expect(() => searches.imports.enterColumn({ ...column, id: 'density' })).toThrow(
    refused('expression/name-taken'),
  );
  expect(() => searches.imports.enterColumn({ ...column, id: 'kingPhi' })).toThrow(
    refused('expression/name-taken'),
  );
  expect(() => searches.imports.removeColumn('heatConduction')).toThrow(refused('column/unknown'));
});
