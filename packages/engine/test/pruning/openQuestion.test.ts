import { expect, test } from 'vitest';
import { openQuestion } from '../../src/pruning/openQuestion.ts';

/** For how many of so many systems the question is asked, where that spares every so manyth. */
function asked(points: number, sparesOneIn: number, systems = 1600): number {
  const question = openQuestion();
  let times = 0;
  for (let system = 0; system < systems; system += 1) {
    if (!question.isDue(points)) continue;
    question.answered(times % sparesOneIn === 0);
    times += 1;
  }
  return times;
}

test('asks before each system where that spares much, and rarely where it spares little', () => {
  expect(asked(1400, 1)).toBe(1600);
  // A third of them is worth the questions where systems are large, not where they are small.
  expect(asked(8000, 3)).toBeGreaterThan(1500);
  expect(asked(1400, 3)).toBeLessThan(150);
});

test('goes on asking now and then, and so notices that it pays again', () => {
  const question = openQuestion();
  const due = (spares: boolean) => {
    const isDue = question.isDue(5000);
    if (isDue) question.answered(spares);
    return isDue;
  };
  for (let system = 0; system < 5000; system += 1) due(false);
  const before = Array.from({ length: 160 }, () => due(false)).filter(Boolean).length;
  for (let system = 0; system < 1600; system += 1) due(true);
  const after = Array.from({ length: 160 }, () => due(true)).filter(Boolean).length;
  expect([before, after]).toEqual([10, 160]);
});
