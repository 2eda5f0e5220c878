import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { everything, question } from '../fixtures/questions.ts';

test('an order that is being made says how far it is, and is made once for all who ask', async () => {
  const { searches } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(question());
  await searches.finished(id);
  expect(searches.ordersInMaking(id)).toEqual([]);

  const asked = { ...everything, order: 'cost', direction: 'desc' } as const;
  const [first, second] = [searches.ready(id, asked), searches.ready(id, { ...asked, limit: 3 })];
  const shares = [searches.ordersInMaking(id)[0]!.share];
  expect(searches.ordersInMaking(id)).toEqual([{ order: 'cost', direction: 'desc', share: 0 }]);
  const told = first.then(() => 'made');
  while ((await Promise.race([told, new Promise((next) => setImmediate(next))])) !== 'made') {
    for (const { share } of searches.ordersInMaking(id)) shares.push(share);
  }
  await second;
  expect(shares.at(-1)).toBeGreaterThan(0.5);
  expect(shares.every((share, at) => share <= 1 && share >= (shares[at - 1] ?? 0))).toBe(true);
  expect(searches.ordersInMaking(id)).toEqual([]);

  const costs = searches.candidates(id, asked).items.map(({ quantities }) => quantities.cost!);
  expect(costs.length).toBeGreaterThan(10);
  expect(costs).toEqual(costs.toSorted((a, b) => b - a));
  // It is there now: nothing is made again.
  const again = searches.ready(id, asked);
  expect(searches.ordersInMaking(id)).toEqual([]);
  await again;
});
