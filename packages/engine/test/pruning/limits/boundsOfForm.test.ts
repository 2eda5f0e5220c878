import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pairForm } from '../../../src/kernel/form.ts';
import { boundsOfForm } from '../../../src/pruning/limits/boundsOfForm.ts';
import { regionsOf } from '../../fixtures/regions.ts';

const size = 8;
const total = 50;
const matrices = fc.array(fc.integer({ min: -300, max: 300 }), {
  minLength: size ** 2,
  maxLength: size ** 2,
});

// The truth is P summed pair by pair, as its definition says.
test('the value within a box is P at a point of it that makes the whole, between its ends', () => {
  fc.assert(
    fc.property(regionsOf(size, 2, [total]), matrices, ({ members, box }, numbers) => {
      const form = pairForm(Float64Array.from(numbers), size, 1, total);
      const bounds = boundsOfForm(form, total, size);
      bounds.enter(members);
      const widths = box.high.map((high, at) => high - box.low[at]!);
      const sum = (values: number[]) => values.reduce((one, other) => one + other, 0);
      const share = sum(widths) === 0 ? 0 : (total - sum(box.low)) / sum(widths);
      const middle = box.low.map((low, at) => low + share * widths[at]!);
      let value = 0;
      for (const [at, one] of members.entries()) {
        for (const [behind, other] of members.entries()) {
          if (one < other) value += numbers[one * size + other]! * middle[at]! * middle[behind]!;
        }
      }
      const near = 1e-9 * 300 * total * total;
      expect(Math.abs(bounds.within(box) - value)).toBeLessThan(near);
      expect(bounds.within(box)).toBeGreaterThan(bounds.least(box) - near);
      expect(bounds.within(box)).toBeLessThan(bounds.greatest(box) + near);
    }),
  );
});
