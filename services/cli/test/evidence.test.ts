import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

// Balanced accuracies on the open published alloys, ± 0.002: own calculation by an independent script.
test('rules come with their record, the phase estimate with its scores', async () => {
  const { criteria, phaseEstimate } = await jsonOf(['evidence']);
  const accuracy = (id: string) =>
    criteria.find((one: { id: string }) => one.id === id).balancedAccuracy as number;
  expect(Math.abs(accuracy('zhang2008') - 0.47)).toBeLessThanOrEqual(0.002);
  expect(Math.abs(accuracy('ye2015') - 0.571)).toBeLessThanOrEqual(0.002);
  const { n, systems, auc, baseRate } = phaseEstimate;
  expect({ n, systems }).toEqual({ n: 310, systems: 108 });
  expect(baseRate).toBeCloseTo(116 / 310, 6);
  expect(auc).toBeGreaterThan(0.69);
  // A grouped score above it must be doubted: a random split leaks to 0.84.
  expect(auc).toBeLessThan(0.82);
});

test('for reading, the evidence fits into 80 characters', async () => {
  const { out } = await tiegel(['evidence']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/Ye et al\. 2015 +\d+ +\d+ +\d+ +\d+ +0\.57/);
  expect(out).toContain('a coin has');
});
