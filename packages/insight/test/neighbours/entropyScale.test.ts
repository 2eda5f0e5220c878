import { conventionalAlloys, parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { entropyScale } from '../../src/index.ts';

const scale = entropyScale(parseAlloy('CoCrFeMnNi'));

test('every conventional alloy and the candidate, lowest entropy first', () => {
  expect(scale).toHaveLength(conventionalAlloys.length + 1);
  const entropies = scale.map(({ entropy }) => entropy);
  expect(entropies).toEqual(entropies.toSorted((a, b) => a - b));
});

// Equimolar five: R ln 5, and no conventional alloy reaches the 1.5 R of the usual definition.
test('an equimolar alloy of five stands above all of them', () => {
  const candidate = scale.at(-1)!;
  expect(candidate.name).toBeNull();
  expect(candidate.entropy).toBeCloseTo(8.314462618 * Math.log(5), 10);
  expect(candidate.effectiveElements).toBeCloseTo(5, 10);
  for (const { name, entropy } of scale.slice(0, -1)) expect(entropy, name!).toBeLessThan(1.5 * 8.314462618);
});

test('a pure element stands at the bottom', () => {
  expect(entropyScale({ Ni: 1 })[0]).toMatchObject({ name: null, entropy: 0, effectiveElements: 1 });
});
