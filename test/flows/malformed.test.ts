import { ProblemError, parseSpecification, searchSpecificationFor } from '@tiegel/contract';
import { parseAlloy, readPriceList, symbols } from '@tiegel/elements';
import { conditions, quantities } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { malformedFixtures } from './malformedFixtures.ts';

const { check } = searchSpecificationFor({
  quantities,
  elements: symbols,
  conditions: Object.values(conditions),
});

const readers = {
  specification: (text: string) => check(parseSpecification(text)),
  alloy: (text: string) => parseAlloy(text.replace(/\n$/, '')),
  prices: readPriceList,
};

for (const kind of ['specification', 'alloy', 'prices'] as const) {
  for (const { name, text, faults } of malformedFixtures(kind)) {
    test(`${kind}: ${name} is answered with every fault at its place`, () => {
      const found = faultsOf(() => readers[kind](text));
      expect(found.map(({ code, pointer }) => ({ code, pointer }))).toEqual(faults);
      for (const { detail, remedy } of found) {
        expect(detail).toMatch(/^["\p{L}\d].*[.?)]$/u);
        expect(remedy).toMatch(/\.$/);
      }
    });
  }
}

test('there are at least thirty of them', () => {
  const kinds = ['specification', 'alloy', 'prices'] as const;
  expect(kinds.flatMap(malformedFixtures).length).toBeGreaterThanOrEqual(30);
});

function faultsOf(read: () => unknown): ProblemError['faults'] {
  try {
    read();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
  return [];
}
