import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bind, bounder, derivative, evaluator, type Program } from '../src/index.ts';
import { inventedFacts, withHoles } from './fixtures/invented.ts';
import { nodes } from './fixtures/nodes.ts';
import { plainValue } from './fixtures/plainValue.ts';
import { type Random, random } from './fixtures/random.ts';
import { type GridPoint, randomPoint, randomRegion } from './fixtures/regions.ts';

const cases = Object.entries(nodes).flatMap(([kind, formulas]) =>
  formulas.map((formula, at) => ({ name: `${kind} ${at + 1}`, formula })),
);
const seeds = fc.integer();

/** A composition of 1 to 5 elements in parts of 20. */
function somePoint(size: number, source: Random): GridPoint {
  const members = source.some([...Array(size).keys()], source.whole(1, Math.min(5, size)));
  const amounts = members.map(() => 1);
  for (let left = 20 - members.length; left > 0; left--) amounts[source.whole(0, members.length - 1)]! += 1;
  return { members, amounts };
}

function valueAt(program: Program, members: readonly number[], amounts: readonly number[]): number {
  const into = new Float64Array(1);
  evaluator(program).evaluate(
    members,
    amounts,
    amounts.reduce((sum, one) => sum + one),
    into,
  );
  return into[0]!;
}

describe.for(cases)('the node $name', ({ formula }) => {
  test('has the value of its meaning, missing data included', () => {
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, holed) => {
        const source = random(seed);
        const complete = inventedFacts(6, source);
        const facts = holed ? withHoles(complete, 0.1, source) : complete;
        const { members, amounts } = somePoint(6, source);
        const fractions = Object.fromEntries(members.map((at, k) => [facts.symbols[at]!, amounts[k]! / 20]));
        const value = valueAt(bind([formula], facts), members, amounts);
        const plain = plainValue(formula, fractions, facts);
        if (Number.isFinite(plain))
          expect(Math.abs(value - plain)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(plain)));
        else expect(value).toBe(plain);
      }),
      { numRuns: 100 },
    );
  });

  test('lies within its interval everywhere in a region, missing data included', () => {
    let valued = 0;
    fc.assert(
      fc.property(seeds, fc.boolean(), (seed, holed) => {
        const source = random(seed);
        const complete = inventedFacts(8, source);
        const facts = holed ? withHoles(complete, 0.1, source) : complete;
        const program = bind([formula], facts);
        const { evaluate } = evaluator(program);
        const into = new Float64Array(1);
        const region = randomRegion(8, source);
        const [interval] = bounder(program).bounds(region);
        for (let trial = 0; trial < 20; trial++) {
          const point = randomPoint(region, source);
          if (!point) return;
          evaluate(point.members, point.amounts, region.total, into);
          if (Number.isFinite(into[0]!)) {
            valued++;
            expect(interval!.missing).not.toBe('always');
            expect(into[0]!).toBeGreaterThanOrEqual(interval!.low);
            expect(into[0]!).toBeLessThanOrEqual(interval!.high);
          } else expect(interval!.missing).not.toBe('never');
        }
      }),
      { numRuns: 100 },
    );
    expect(valued).toBeGreaterThan(100);
  });

  test('changes as its derivative says', () => {
    let compared = 0;
    fc.assert(
      fc.property(seeds, (seed) => {
        const source = random(seed);
        const program = bind([formula], inventedFacts(5, source));
        const { members, amounts } = somePoint(5, source);
        const shares = amounts.map((amount) => amount / 20);
        const raw = shares.map(() => source.fraction() - 0.5);
        const mean = raw.reduce((sum, one) => sum + one, 0) / raw.length;
        const changes = raw.map((one) => one - mean);
        const { evaluate, values } = evaluator(program);
        evaluate(members, shares, 1, new Float64Array(1));
        const [rate] = derivative(program, values, { members, shares, changes });
        const moved = (step: number) =>
          valueAt(
            program,
            members,
            shares.map((share, at) => share + step * changes[at]!),
          );
        const slope = (step: number) => (moved(step) - moved(-step)) / (2 * step);
        // Two steps, extrapolated: the error falls with the fourth power. They differ where a kink is near.
        const [coarse, fine] = [slope(2e-4), slope(1e-4)];
        const scale = Math.max(1, Math.abs(fine));
        if (!Number.isFinite(fine) || Math.abs(coarse - fine) > 1e-4 * scale) return;
        if (Math.abs(moved(2e-4) + moved(-2e-4) - 2 * moved(0)) > 1e-5 * scale) return;
        compared++;
        expect(Math.abs(rate! - (4 * fine - coarse) / 3)).toBeLessThanOrEqual(1e-6 * scale);
      }),
      { numRuns: 100 },
    );
    expect(compared).toBeGreaterThan(30);
  });
});
