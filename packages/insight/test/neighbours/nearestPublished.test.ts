import { parseAlloy } from '@tiegel/elements';
import { publishedAlloys, publishedMeasurements } from '@tiegel/elements/publishedAlloys';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compositionDistance, nearestPublished, neighboursTrust, novelty } from '../../src/index.ts';
import { alphabetical } from '../../src/neighbours/compositionDistance.ts';
import { alloys } from '../fixtures/alloys.ts';

test('a published alloy is its own nearest, with all that publications say of it', () => {
  const [first] = nearestPublished(parseAlloy('CoCrFeMnNi'));
  expect(first).toMatchObject({ formula: 'CoCrFeMnNi', distance: 0, phases: 'FCC' });
  expect(first!.reports).toEqual([
    { phases: 'FCC', references: 17 },
    { phases: 'FCC+BCC', references: 2 },
    { phases: 'Other', references: 1 },
  ]);
  expect(first!.doi).toHaveLength(17);
});

// CoCrFeNi: exchanging the fifth of CoCrFeMnNi that is manganese.
test('CoCrFeNi is 0.2 from CoCrFeMnNi', () => {
  const neighbours = nearestPublished(parseAlloy('CoCrFeNi'), publishedAlloys().length);
  expect(neighbours.find(({ formula }) => formula === 'CoCrFeMnNi')!.distance).toBeCloseTo(0.2, 12);
});

test('they come nearest first, as many as asked for, and none nearer is left out', () => {
  fc.assert(
    fc.property(alloys(undefined, { least: 1 }), fc.integer({ min: 1, max: 9 }), (alloy, count) => {
      const found = nearestPublished(alloy, count);
      const distances = found.map(({ distance }) => distance);
      expect(found).toHaveLength(count);
      expect(distances).toEqual(distances.toSorted((a, b) => a - b));
      const all = publishedAlloys().map(({ composition }) =>
        compositionDistance(alphabetical(alloy), composition),
      );
      expect(distances).toEqual(all.sort((a, b) => a - b).slice(0, count));
      expect(novelty(alloy)).toBe(distances[0]);
    }),
    { numRuns: 30 },
  );
});

test('of equally near ones the one of more publications comes first', () => {
  const references = new Map(publishedAlloys().map(({ formula, references: count }) => [formula, count]));
  let ties = 0;
  for (const alloy of ['CoNi', 'CuFe', 'Mo', 'AlNi']) {
    const found = nearestPublished(parseAlloy(alloy), publishedAlloys().length);
    found.slice(1).forEach((one, at) => {
      if (one.distance !== found[at]!.distance) return;
      ties++;
      expect(references.get(one.formula)).toBeLessThanOrEqual(references.get(found[at]!.formula)!);
    });
  }
  expect(ties).toBeGreaterThan(100);
});

test('how often publications disagree is as the text says', () => {
  const described = publishedAlloys().filter(({ formula }) => {
    const labelled = publishedMeasurements().filter((one) => one.formula === formula && one.phases !== null);
    return new Set(labelled.map(({ doi }) => doi)).size > 1;
  });
  const disputed = described.filter(({ reports }) => reports.length > 1);
  expect(disputed.length / described.length).toBeCloseTo(0.5, 1);
  expect(neighboursTrust).toContain('disagree on half');
});
