import { readFileSync } from 'node:fs';
import { scoreReference } from '@tiegel/engine';
import { afterAll, describe, expect, test } from 'vitest';
import { exhaustive, type Found } from './independent/exhaustive.ts';
import { referenceData } from './independent/referenceData.ts';
import { searchFixtures } from './independent/searchFixtures.ts';
import { engineVariant } from './variants/engineVariant.ts';
import type { Variant } from './variants/variant.ts';

const data = referenceData();
const variants: Variant[] = [
  {
    name: 'the plain search itself, run now',
    find: async (file) => exhaustive(JSON.parse(readFileSync(file, 'utf8')), data),
  },
  engineVariant('reference scorer', scoreReference, (chunks) => chunks),
  engineVariant('reference scorer, chunks backwards', scoreReference, (chunks) => chunks.toReversed()),
];

for (const variant of variants) {
  describe(variant.name, () => {
    afterAll(() => variant.close?.());
    for (const { name, specification, expected } of searchFixtures()) {
      test(`${name}: the same counts and candidates as the exhaustive search`, async () => {
        expectSame(await variant.find(specification), JSON.parse(readFileSync(expected, 'utf8')));
      });
    }
  });
}

/** Counts and compositions must be equal, scores to what floating point leaves of them. */
function expectSame(found: Found, expected: Found): void {
  expect(found.counts).toEqual(expected.counts);
  expect(found.candidates.map(([composition]) => composition)).toEqual(
    expected.candidates.map(([composition]) => composition),
  );
  for (const [index, [, score]] of found.candidates.entries()) {
    const [, right] = expected.candidates[index]!;
    if (right === null || score === null) expect(score).toBe(right);
    else expect(Math.abs(score - right)).toBeLessThanOrEqual(1e-10 * Math.max(1, Math.abs(right)));
  }
}
