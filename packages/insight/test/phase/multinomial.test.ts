import { expect, test } from 'vitest';
import { classProbabilities, fitMultinomial } from '../../src/phase/multinomial.ts';
import { seededRandom } from '../../src/seededRandom.ts';

// Two classes and one yes-or-no input leave nothing to fit: the log odds are those of the counts.
test('two classes and one binary input give the log odds of the counts', () => {
  const weights = fitMultinomial(
    [[0], [1]],
    [
      [3e6, 1e6],
      [0.5e6, 3.5e6],
    ],
    1e-6,
  );
  const logOdds = (x: number) => {
    const [one, other] = classProbabilities(weights, [x]);
    return Math.log(one! / other!);
  };
  expect(logOdds(0)).toBeCloseTo(Math.log(3), 7);
  expect(logOdds(1)).toBeCloseTo(Math.log(1 / 7), 7);
});

test('without inputs that tell, the shares of the classes come out', () => {
  const p = classProbabilities(
    fitMultinomial(
      [[0], [0]],
      [
        [2e4, 5e4, 1e4],
        [0, 1e4, 1e4],
      ],
      1,
    ),
    [0],
  );
  [0.2, 0.6, 0.2].forEach((share, k) => {
    expect(p[k]).toBeCloseTo(share, 6);
  });
});

const random = seededRandom(7);
const rows = Array.from({ length: 60 }, () => [random() * 4 - 2, random() * 2 - 1]);
const targets = rows.map(([x]) => {
  const k = Math.min(2, Math.floor(random() * 2 + (x! > 0 ? 1 : 0)));
  return [0, 1, 2].map((one) => (one === k ? 1 + random() : 0));
});

test('at the fit the penalised likelihood is flat: no step up or down in any weight gains', () => {
  const penalty = 0.7;
  const weights = fitMultinomial(rows, targets, penalty).map((row) => [...row]);
  // The intercept, last in a row, carries a penalty of a thousandth.
  const loss = () =>
    rows.reduce((sum, row, at) => {
      const p = classProbabilities(weights, row);
      return sum - targets[at]!.reduce((said, t, k) => said + t * Math.log(p[k]!), 0);
    }, 0) +
    weights
      .flatMap(([a, b, c]) => [penalty * a! ** 2, penalty * b! ** 2, 1e-3 * c! ** 2])
      .reduce((a, b) => a + b) /
      2;
  for (const row of weights) {
    for (const f of row.keys()) {
      const there = row[f]!;
      const [up, down] = [1e-4, -1e-4].map((step) => {
        row[f] = there + step;
        return loss();
      });
      row[f] = there;
      expect(Math.abs(up! - down!) / 2e-4).toBeLessThan(1e-6);
      expect(up! + down! - 2 * loss()).toBeGreaterThan(0);
    }
  }
});

test('a heavier penalty shrinks the weights', () => {
  const size = (penalty: number) =>
    fitMultinomial(rows, targets, penalty).reduce((sum, [a, b]) => sum + a! ** 2 + b! ** 2, 0);
  expect(size(10)).toBeLessThan(size(1));
  expect(size(1)).toBeLessThan(size(0.1));
});

test('probabilities add up to 1 and stay numbers where the log odds are huge', () => {
  const p = classProbabilities(
    [
      [900, 0],
      [-900, 0],
      [0, 0],
    ],
    [1],
  );
  expect(p.reduce((a, b) => a + b)).toBe(1);
  expect(p[0]).toBe(1);
});
