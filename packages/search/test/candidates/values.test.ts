import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { candidatesOf, everything, question } from '../fixtures/questions.ts';

test('of more candidates than are asked for, all of the best and every so many of the others are given', async () => {
  const { searches } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(question({ limits: [], keep: 10_000, keepPerSystem: 0 }));
  const { kept } = await searches.finished(id);
  const density = new Map(
    candidatesOf(searches, id).map(({ rank, quantities }) => [rank, quantities.density!]),
  );
  const ranks = [...density.keys()];
  for (const [limit, every] of [
    [kept, 1],
    [kept - 1, 2],
    [Math.ceil(kept / 3), 3],
    [Math.ceil(kept / 3) - 1, 4],
  ] as const) {
    const found = await searches.values(id, everything, ['density'], limit);
    const expected = ranks.filter((rank) => rank <= 200 || rank % every === 1 % every);
    expect(found).toMatchObject({ every, meeting: kept, ranks: expected });
    expect(found.values).toEqual([expected.map((rank) => density.get(rank))]);
  }
});
