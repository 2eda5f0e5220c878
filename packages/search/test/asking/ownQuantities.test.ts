import { demoPrices, factsFor } from '@tiegel/elements';
import { ownQuantity, quantities, valuesOf } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, everything, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';

const eager = () => laboratory({ queue: handQueue({ eager: true }) });

const lets = {
  stiffness: 'youngsModulus / density',
  merit_2: '0.4 * min(omega, 10) / 10 + stiffness / 40',
};
const asked = question({
  lets,
  limits: [
    { quantity: 'stiffness', min: 27 },
    { quantity: 'singlePhaseEstimate', min: 0.5 },
  ],
  rank: [{ quantity: 'merit_2', prefer: 'high' }],
});

test('figures of merit of one’s own limit, rank and are columns like any quantity', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(asked);
  const view = await searches.finished(id);
  const expected = answer(asked);
  expect(view).toMatchObject({ state: 'done', counts: expected.counts });
  expect(expected.counts.passed).toBeGreaterThan(100);
  expect(expected.counts.passed).toBeLessThan(expected.counts.points);
  expect(view.moreQuantities.map(({ id, kind, unit }) => [id, kind, unit])).toEqual([
    ['stiffness', 'own', 'GPa/(g/cm3)'],
    ['merit_2', 'own', ''],
  ]);
  expect(view.question).toContain('stiffness ≥ 27');
  const own = ownQuantity('merit', '0.4*min(omega,10)/10 + youngsModulus/density/40', quantities);
  for (const { composition, quantities: found, score } of candidatesOf(searches, id)) {
    const facts = factsFor(Object.keys(composition), { prices: demoPrices });
    const { youngsModulus, density } = valuesOf(composition, facts, ['youngsModulus', 'density']);
    expect(found.merit_2).toBe(score);
    expect(found.merit_2).toBeCloseTo(valuesOf(composition, facts, [own]).merit!, 10);
    expect(found.stiffness).toBeCloseTo(youngsModulus! / density!, 10);
  }
});

test('kept candidates are filtered and ordered by them, and those of two searches do not mix', async () => {
  const { searches } = await eager();
  const first = await searches.submit(asked);
  const other = await searches.submit(
    question({ lets: { lightness: '10 / density' }, rank: [{ quantity: 'lightness', prefer: 'high' }] }),
  );
  await Promise.all([searches.finished(first.id), searches.finished(other.id)]);
  const all = candidatesOf(searches, first.id).map(({ quantities }) => quantities.stiffness!);
  const middle = all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)]!;
  const page = searches.candidates(first.id, {
    ...everything,
    ranges: [{ quantity: 'stiffness', min: middle }],
    order: 'stiffness',
    direction: 'desc',
  });
  expect(page.items.map(({ quantities }) => quantities.stiffness)).toEqual(
    all.filter((value) => value >= middle).toSorted((a, b) => b - a),
  );
  for (const { quantities: found } of candidatesOf(searches, other.id)) {
    expect(found.lightness).toBeCloseTo(10 / found.density!, 10);
    expect(found).not.toHaveProperty('stiffness');
  }
  expect(() => searches.candidates(other.id, { ...everything, order: 'stiffness' })).toThrow(
    refused('request/invalid', '/order'),
  );
});

test('what is wrong with an expression is told with its place, beside all other faults', async () => {
  const { searches } = await laboratory();
  const wrong = question({
    lets: { merit: 'densty / 8', other: 'density + meltingTemperature', 'no name': 'omega' },
    limits: [{ quantity: 'merti', min: 1 }],
  });
  const error = await searches.size(wrong).catch((error: unknown) => error);
  const faults = (error as { faults: { code: string; pointer: string }[] }).faults;
  expect(faults.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
    'quantity/unknown /limits/0/quantity',
    'expression/unknown-name /lets/merit',
    'expression/units /lets/other',
    'expression/name /lets/no name',
  ]);
});

test('a value that an element lacks is named for an expression, too', async () => {
  const { searches } = await laboratory({ prices: null });
  const priced = question({
    lets: { value: 'density / cost' },
    rank: [{ quantity: 'value', prefer: 'high' }],
  });
  await expect(searches.size(priced)).rejects.toEqual(refused('search/price-missing', '/rank/0/quantity'));
});
