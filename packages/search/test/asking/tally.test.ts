import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, everything, question } from '../fixtures/questions.ts';

const eager = () => laboratory({ queue: handQueue({ eager: true }) });

test.each(['all', 'none'] as const)(
  'with tally %s the same candidates are found, and what is not counted is null',
  async (tally) => {
    const { searches } = await eager();
    const { id } = await searches.submit(question({ tally }));
    const view = await searches.finished(id);
    const { counts, scores } = answer(question());
    const { systems, points } = counts;
    const passed = tally === 'all' ? counts.passed : null;
    expect(view.counts).toEqual({ systems, points, passed, passedEach: null, outside: null });
    expect(candidatesOf(searches, id).map(({ score }) => score)).toEqual(scores);
    expect(searches.candidates(id, everything).among).toEqual({ kept: view.kept, passed, points });
  },
);

test.each(['all', 'none'] as const)('with tally %s a search that finds nothing says so', async (tally) => {
  const { searches } = await eager();
  const limits = [
    { quantity: 'valenceElectronConcentration', min: 8.9 },
    { quantity: 'mixingEnthalpy', max: -20 },
  ];
  const { id } = await searches.submit(question({ tally, limits }));
  const { kept, notices } = await searches.finished(id);
  expect(kept).toBe(0);
  expect(notices.join()).toContain('No point meets all limits');
});

test('the time of a search that leaves regions out is a bound, and it is said which of the two it is', async () => {
  const { searches } = await eager();
  expect(await searches.size(question())).toMatchObject({ atMost: false });
  const { seconds, atMost } = await searches.size(question({ tally: 'none' }));
  expect(atMost).toBe(true);
  expect(seconds).toBeGreaterThan(0);
});
