import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { ownEvidence } from '@tiegel/insight';
import { expect, test } from 'vitest';
import { keptEvidence } from '../../src/alloys/keptEvidence.ts';

const alloys = publishedAlloys()
  .filter(({ phases }) => phases !== null)
  .slice(0, 25);

test('is worked out once for the same alloys, and anew for others', async () => {
  const found = await keptEvidence(alloys, 'melts');
  expect(found).toEqual(ownEvidence(alloys));
  expect(await keptEvidence(structuredClone(alloys), 'melts')).toBe(found);
  expect(await keptEvidence(alloys.slice(1), 'melts')).toEqual(ownEvidence(alloys.slice(1)));
});

test('melts and alloys that were brought in do not stand for each other', async () => {
  const melted = await keptEvidence(alloys, 'melts');
  expect((await keptEvidence(alloys, 'alloys'))!.trust).toContain('brought in');
  expect(await keptEvidence(alloys, 'melts')).toBe(melted);
});

test('without any there is none', async () => expect(await keptEvidence([], 'melts')).toBeNull());

test('others have their turns meanwhile, and who asks for the same waits for the same', async () => {
  const many = Array.from({ length: 40 }, (_, copy) => alloys.map((one) => ({ ...one, copy }))).flat();
  let [turns, over] = [0, false];
  const count = () => {
    turns += 1;
    if (!over) setImmediate(count);
  };
  setImmediate(count);
  const [first, second] = await Promise.all([keptEvidence(many, 'melts'), keptEvidence(many, 'melts')]);
  over = true;
  expect(second).toBe(first);
  expect(first).toEqual(ownEvidence(many));
  // A thousand alloys take more than ten turns on any machine; in one piece it was two.
  expect(turns).toBeGreaterThan(10);
});
