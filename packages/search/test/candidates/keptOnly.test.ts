import { demoPrices, factsFor } from '@tiegel/elements';
import { lateValuesOf } from '@tiegel/insight';
import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { candidatesOf, everything, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';

const eager = () => laboratory({ queue: handQueue({ eager: true }) });
const keptOnly = [
  { quantity: 'demixingRatio', max: 0.06 },
  { quantity: 'hullDistance', max: -9 },
];

test('limits on late quantities leave those kept candidates that meet them, ranked anew', async () => {
  const { searches } = await eager();
  const plain = await searches.submit(question());
  const narrowed = await searches.submit(question({ keptOnly }));
  await searches.finished(plain.id);
  const view = await searches.finished(narrowed.id);
  const facts = factsFor(['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'], { prices: demoPrices });
  const all = candidatesOf(searches, plain.id);
  const expected = all.filter(({ composition }) => {
    const late = lateValuesOf(composition, facts, ['demixingRatio', 'hullDistance']);
    return late.demixingRatio! <= 0.06 && late.hullDistance! <= -9;
  });
  const found = candidatesOf(searches, narrowed.id);
  expect(expected.length).toBeGreaterThan(5);
  expect(expected.length).toBeLessThan(all.length);
  expect(found.map(({ composition }) => composition)).toEqual(expected.map(({ composition }) => composition));
  expect(found.map(({ rank }) => rank)).toEqual(found.map((_, place) => place + 1));
  for (const { composition, quantities } of found) {
    const late = lateValuesOf(composition, facts, ['demixingRatio', 'hullDistance']);
    expect(quantities.demixingRatio).toBeCloseTo(late.demixingRatio!, 9);
    expect(quantities.hullDistance).toBeCloseTo(late.hullDistance!, 9);
  }
  expect(view.kept).toBe(found.length);
  expect(view.moreQuantities.map(({ id, kind }) => [id, kind])).toEqual([
    ['demixingRatio', 'late'],
    ['hullDistance', 'late'],
  ]);
});

test('the result says that they were asked of the kept ones alone, and offers to keep more where few are left', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question({ keptOnly, keep: 40, keepPerSystem: 0 }));
  const { notices, kept, question: words } = await searches.finished(id);
  expect(kept).toBeLessThan(50);
  expect(words).toContain('of those kept only');
  expect(notices.at(-1)).toContain(`${kept} of the 40 best have`);
  expect(notices.at(-1)).toContain('of these 40 alone');
  expect(notices.at(-1)).toContain('search again with "keep": 400');
});

test('late quantities filter and order what is kept', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question({ keptOnly: [{ quantity: 'demixingRatio', max: 100 }] }));
  await searches.finished(id);
  const values = (order: 'asc' | 'desc', min?: number) =>
    searches
      .candidates(id, {
        ...everything,
        order: 'demixingRatio',
        direction: order,
        ranges: min === undefined ? [] : [{ quantity: 'demixingRatio', min }],
      })
      .items.map(({ quantities }) => quantities.demixingRatio!);
  const rising = values('asc');
  expect(rising).toEqual(rising.toSorted((a, b) => a - b));
  const half = rising[Math.floor(rising.length / 2)]!;
  expect(values('desc', half)).toEqual(rising.filter((value) => value >= half).toReversed());
});

test('a late quantity can neither limit nor rank every point', async () => {
  const { searches } = await laboratory();
  await expect(searches.size(question({ limits: [{ quantity: 'demixingRatio', max: 1 }] }))).rejects.toEqual(
    refused('quantity/late', '/limits/0/quantity'),
  );
  await expect(searches.size(question({ keptOnly: [{ quantity: 'density', max: 8 }] }))).rejects.toEqual(
    refused('quantity/unknown', '/keptOnly/0/quantity'),
  );
});
