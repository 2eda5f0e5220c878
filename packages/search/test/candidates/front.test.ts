import { demoPrices } from '@tiegel/elements';
import { scoreReference } from '@tiegel/engine';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { distributionsOf } from '../../src/distributions/distributionsOf.ts';
import { closingNotices } from '../../src/working/closingNotices.ts';
import type { Underway } from '../../src/working/underway.ts';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { candidatesOf, everything, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';

const front = [
  { quantity: 'density', prefer: 'low' },
  { quantity: 'valenceElectronConcentration', prefer: 'high' },
] as const;
const request = question({ front, keep: 5, keepPerSystem: 0 });

test('the members of a front are kept beside the best, marked, and none that passes dominates another', async () => {
  const { searches } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(request);
  const { counts, kept, question: words, notices } = await searches.finished(id);
  expect(words).toContain('with the Pareto front of low density against high valence electron concentration');
  expect(notices).toEqual([]);

  // Everything that passes, from a search that keeps it all.
  const { id: whole } = await searches.submit(question({ keep: 10_000, keepPerSystem: 0 }));
  await searches.finished(whole);
  const all = candidatesOf(searches, whole);
  expect(all).toHaveLength(counts.passed!);
  expect(all[0]).not.toHaveProperty('front');
  const members = all.filter((one) => !all.some((other) => dominates(other, one)));
  const best = all.slice(0, 5);

  const found = candidatesOf(searches, id);
  expect(found).toHaveLength(kept);
  expect(found.map(({ rank }) => rank)).toEqual(found.map((_, place) => place + 1));
  const expected = all.filter((one) => best.includes(one) || members.includes(one));
  expect(found.map(({ composition }) => composition)).toEqual(expected.map(({ composition }) => composition));
  expect(found.map((one) => one.front)).toEqual(expected.map((one) => members.includes(one)));
  const page = searches.candidates(id, { ...everything, front: true, order: 'density' });
  expect(page.items.map(({ composition }) => composition)).toEqual(
    members
      .toSorted((one, other) => one.quantities.density! - other.quantities.density! || one.rank - other.rank)
      .map(({ composition }) => composition),
  );
  await searches.ready(id, { ...everything, order: 'density' });
  expect(() => searches.candidates(whole, { ...everything, front: true })).toThrow(
    refused('request/invalid'),
  );
});

interface Valued {
  quantities: Record<string, number | null>;
}

function dominates({ quantities: one }: Valued, { quantities: other }: Valued): boolean {
  const light = one.density! - other.density!;
  const electrons = one.valenceElectronConcentration! - other.valenceElectronConcentration!;
  return light <= 0 && electrons >= 0 && (light < 0 || electrons > 0);
}

test('what a front is made of needs its data, belongs in the sample, and its conditions in the question', () => {
  const without = () =>
    checkSearch(question({ front: [front[0], { quantity: 'cost', prefer: 'low' }] }), { prices: null }, 1e9);
  expect(without).toThrow(refused('search/price-missing'));
  const strong = [front[0], { quantity: 'yieldStrengthFcc', prefer: 'high' }];
  const specification = question({ front: strong });
  expect(checkSearch(specification, { prices: demoPrices }, 1e9).question).toMatch(/service temperature/);
  const { quantities } = distributionsOf({ specification, sample: 10 }, { prices: demoPrices }, 1e9);
  expect(quantities.map(({ quantity }) => quantity)).toContain('yieldStrengthFcc');
});

test('a front with more members than are kept says up to where it is complete', () => {
  const { prepared, plan } = checkSearch(request, { prices: demoPrices, columns: [] }, 1e9);
  const chunk = { ordinal: 0, firstSystem: 0, endSystem: prepared.systems.count, firstPoint: 0 };
  const outcome = scoreReference(prepared, { ...chunk, endPoint: null, points: 0 }, { cutOff: null })!;
  const members = outcome.front!.members;
  const cut = { ...outcome, front: { members, cut: members.slice(-5) } };
  const [notice] = closingNotices({ outcome: cut, plan } as Underway, { kept: 1, seen: 1 }, 'EUR');
  expect(notice).toMatch(/not complete.*none is missing up to density \d/);
});
