import fc from 'fast-check';
import { expect, test } from 'vitest';
import { conformalCoverage, conformalThreshold } from '../../src/phase/conformalCoverage.ts';
import { seededRandom } from '../../src/seededRandom.ts';

test('at least 80 % of what was said of the reported class reaches the threshold, and no higher one would do', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 10 }), (said) => {
      const threshold = conformalThreshold(said);
      const reaching = (least: number) => said.filter((p) => p >= least).length / said.length;
      expect(reaching(threshold)).toBeGreaterThanOrEqual(0.8);
      const next = said.filter((p) => p > threshold).sort((a, b) => a - b)[1];
      if (next !== undefined) expect(reaching(next)).toBeLessThanOrEqual(0.8);
    }),
  );
});

// Split conformal: of n probabilities the threshold is the (n + 1)/5-th from below.
test.each([4, 9, 14, 249])('of %i alloys exactly a fifth of the places lies below the threshold', (count) => {
  const said = Array.from({ length: count }, (_, at) => (at + 1) / 1000);
  expect(conformalThreshold(said)).toBe((count + 1) / 5 / 1000);
});

test('too few alloys to leave any out: every class is likely', () => {
  expect(conformalThreshold([0.4, 0.6, 0.9])).toBe(0);
});

/** Alloys whose classes are drawn from the probabilities that are said of them. */
function drawn(count: number) {
  const random = seededRandom(3);
  const probabilities = Array.from({ length: count }, () => {
    const odds = [random(), random(), random(), random()].map((one) => one ** 3);
    const total = odds.reduce((a, b) => a + b);
    return odds.map((one) => one / total);
  });
  const classes = probabilities.map((p) => {
    let rest = random();
    const found = p.findIndex((one) => {
      rest -= one;
      return rest < 0;
    });
    return found < 0 ? 3 : found;
  });
  return { probabilities, classes, folds: classes.map(() => Math.floor(random() * 5)) };
}

test('the sets hold 80 % of alloys that they did not see, with fewer than all classes', () => {
  const { probabilities, classes, folds } = drawn(4000);
  const { coverage, size } = conformalCoverage(probabilities, classes, folds);
  // 2.5 % is four standard deviations of 4000 answers
  expect(Math.abs(coverage - 0.8)).toBeLessThan(0.025);
  expect(size).toBeLessThan(3);
});

// Thresholds come from the other folds, so a fold whose probabilities are turned upside down shows.
test('probabilities that are wrong for two folds in five cost coverage', () => {
  const { probabilities, classes, folds } = drawn(4000);
  const wrong = probabilities.map((p, at) => (folds[at]! < 2 ? turnedUpsideDown(p) : p));
  const before = conformalCoverage(probabilities, classes, folds);
  const after = conformalCoverage(wrong, classes, folds);
  expect(after.size).toBeGreaterThan(before.size + 0.5);
});

/** The likeliest class gets the least probability, and so on. */
function turnedUpsideDown(p: readonly number[]): number[] {
  const ascending = p.toSorted((a, b) => a - b);
  return p.map((one) => ascending[p.length - 1 - ascending.indexOf(one)]!);
}
