import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstMode } from '../../src/regularSolution/firstMode.ts';
import { hessian, isPositiveDefinite } from '../fixtures/definite.ts';

const solutions = fc.integer({ min: 2, max: 7 }).chain((size) =>
  fc.record({
    parts: fc.array(fc.integer({ min: 1, max: 50 }), { minLength: size, maxLength: size }),
    energies: fc.array(fc.integer({ min: -200_000, max: 200_000 }), {
      minLength: (size * (size - 1)) / 2,
      maxLength: (size * (size - 1)) / 2,
    }),
  }),
);

function solutionOf({ parts, energies }: { parts: number[]; energies: number[] }) {
  const total = parts.reduce((sum, part) => sum + part, 0);
  const matrix = parts.map(() => parts.map(() => 0));
  let at = 0;
  for (let i = 1; i < parts.length; i++) {
    for (let j = 0; j < i; j++) matrix[i]![j] = matrix[j]![i] = energies[at++]!;
  }
  return { fractions: parts.map((part) => part / total), matrix };
}

// Independent of any eigenvalue: stability is positive definiteness of the Hessian.
test('the solution is stable just above the temperature and unstable just below', () => {
  fc.assert(
    fc.property(solutions, (solution) => {
      const { fractions, matrix } = solutionOf(solution);
      const first = firstMode(fractions, matrix);
      if (first === null) {
        expect(isPositiveDefinite(hessian(fractions, matrix, 1e-3))).toBe(true);
        return;
      }
      expect(isPositiveDefinite(hessian(fractions, matrix, first.temperature * (1 + 1e-9)))).toBe(true);
      expect(isPositiveDefinite(hessian(fractions, matrix, first.temperature * (1 - 1e-9)))).toBe(false);
    }),
  );
});

test('along the direction the free energy has no curvature at that temperature', () => {
  fc.assert(
    fc.property(solutions, (solution) => {
      const { fractions, matrix } = solutionOf(solution);
      const first = firstMode(fractions, matrix);
      if (first === null) return;
      const { temperature, direction } = first;
      let [curvature, scale] = [0, 0];
      for (const [i, one] of direction.entries()) {
        for (const [j, other] of direction.entries()) curvature += matrix[i]![j]! * one * other;
        scale += (8.314462618 * temperature * one * one) / fractions[i]!;
      }
      expect(Math.abs(curvature + scale)).toBeLessThan(1e-9 * scale + 1e-6);
    }),
  );
});

test('a direction moves atoms about and makes none: its sum is 0, its length 1, its largest entry positive', () => {
  fc.assert(
    fc.property(solutions, (solution) => {
      const { fractions, matrix } = solutionOf(solution);
      const direction = firstMode(fractions, matrix)?.direction;
      if (direction === undefined) return;
      expect(Math.abs(direction.reduce((sum, entry) => sum + entry, 0))).toBeLessThan(1e-10);
      expect(Math.hypot(...direction)).toBeCloseTo(1, 12);
      expect(Math.max(...direction)).toBeGreaterThanOrEqual(-Math.min(...direction) - 1e-9);
    }),
  );
});

// T = 2 Ω c(1 − c)/R for Ω > 0, none for Ω ≤ 0.
test('two components follow the closed form to 1e-9', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: -200, max: 200 }), (parts, kilojoule) => {
      const [share, omega] = [parts / 1000, kilojoule * 1000];
      const matrix = [
        [0, omega],
        [omega, 0],
      ];
      const found = firstMode([share, 1 - share], matrix)?.temperature ?? null;
      const closed = (2 * omega * share * (1 - share)) / 8.314462618;
      if (kilojoule <= 0) expect(found).toBeNull();
      else expect(Math.abs(found! / closed - 1)).toBeLessThan(1e-9);
    }),
  );
});

// n equal components with one common Ω > 0: every direction turns unstable at T = Ω/(nR).
test('equal components that repel alike follow the closed form', () => {
  for (const size of [2, 3, 5, 8]) {
    const fractions = Array.from({ length: size }, () => 1 / size);
    const matrix = fractions.map((_, i) => fractions.map((_, j) => (i === j ? 0 : 20_000)));
    expect(firstMode(fractions, matrix)?.temperature).toBeCloseTo(20_000 / (size * 8.314462618), 8);
  }
});

test('one component alone has no mode', () => {
  expect(firstMode([1], [[0]])).toBeNull();
});
