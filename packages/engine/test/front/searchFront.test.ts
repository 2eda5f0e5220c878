import { evaluator, quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { type Prepared, planChunks, prepare, scoreChunk, scoreReference } from '../../src/index.ts';
import { scoredInChunks, wholeChunk } from '../fixtures/chunks.ts';
import { smallPlans } from '../fixtures/plans.ts';

const entry = fc.record({
  quantity: fc.constantFrom(...quantities.map(({ id }) => id)),
  prefer: fc.constantFrom('high' as const, 'low' as const),
});
const plans = fc
  .tuple(smallPlans, fc.uniqueArray(entry, { minLength: 2, maxLength: 4, selector: (one) => one.quantity }))
  .map(([plan, front]) => ({ ...plan, specification: { ...plan.specification, front } }))
  .map(prepare)
  .filter(({ systems }) => systems.count > 0);

/** Members as texts 'system point', by the definition: every point that passes against every other one. */
function byDefinition({ grid, systems, program, limits, frontOutputs, ranking }: Prepared): string[] {
  const { evaluate } = evaluator(program);
  const passing: { name: string; keys: number[] }[] = [];
  for (let number = 0; number < systems.count; number += 1) {
    const system = systems.systemAt(number);
    const numbering = pointNumbering(grid, system);
    for (let point = 0; point < numbering.count; point += 1) {
      const values = new Float64Array(program.outputs.length);
      const parts = numbering.partsAt(point);
      evaluate(
        system,
        parts,
        parts.reduce((sum, part) => sum + part, 0),
        values,
      );
      if (
        !limits.every(
          ({ output, least, greatest }) => values[output]! >= least && values[output]! <= greatest,
        )
      )
        continue;
      const keys = frontOutputs.map((output, place) =>
        ranking.front![place] === 'high' ? -values[output]! : values[output]!,
      );
      if (keys.every(Number.isFinite)) passing.push({ name: `${number} ${point}`, keys });
    }
  }
  const dominates = (one: number[], other: number[]) =>
    one.every((key, place) => key <= other[place]!) && one.some((key, place) => key < other[place]!);
  return passing
    .filter(({ keys }) => !passing.some((other) => dominates(other.keys, keys)))
    .map(({ name }) => name);
}

test('a search’s front is that of the definition', () => {
  fc.assert(
    fc.property(plans, (prepared) => {
      const whole = wholeChunk(prepared);
      const { front, points } = scoreReference(prepared, whole, { cutOff: null })!;
      const stride = 3 + prepared.frontOutputs.length;
      const names = Array.from(
        { length: front!.members.length / stride },
        (_, at) => `${front!.members[at * stride + 1]} ${front!.members[at * stride + 2]}`,
      );
      // Every point against every other one: too many pairs of a larger grid.
      fc.pre(points < 1500);
      expect(names.toSorted()).toEqual(byDefinition(prepared).toSorted());
    }),
    { numRuns: 150 },
  );
});

test('in blocks, in any chunks and with any cut-off it is the same, digit for digit', () => {
  fc.assert(
    fc.property(
      plans,
      fc.integer({ min: 20, max: 300 }),
      fc.double({ noNaN: true }),
      (prepared, points, cutOff) => {
        const whole = wholeChunk(prepared);
        const expected = scoreReference(prepared, whole, { cutOff: null });
        expect(scoreChunk(prepared, whole, { cutOff: null })).toStrictEqual(expected);
        expect(scoreChunk(prepared, whole, { cutOff })!.front).toStrictEqual(expected!.front);
        if (planChunks(prepared.grid, { pointsPerChunk: points, workers: 1 }).length === 0) return;
        expect(scoredInChunks(prepared, scoreChunk, points)).toEqual(expected);
      },
    ),
    { numRuns: 150 },
  );
});
