import fc from 'fast-check';
import { expect, test } from 'vitest';
import { editDistance, nearest } from '../../src/problem/nearest.ts';

const quantities = ['mixingEnthalpy', 'sizeMismatch', 'omega', 'density', 'cost', 'costPerLitre'];

test('a letter left out, put in, changed or exchanged with its neighbour is a near miss', () => {
  for (const word of ['densty', 'densitty', 'densiti', 'denisty'])
    expect(nearest(word, quantities)).toBe('density');
});

test('capitals do not count', () => {
  expect(nearest('Density', quantities)).toBe('density');
  expect(nearest('MIXINGENTHALPY', quantities)).toBe('mixingEnthalpy');
  expect(nearest('co', ['C', 'Co', 'Cr'])).toBe('Co');
});

test('a word of two letters is near to nothing but its own spelling', () => {
  expect(nearest('Xx', ['Xe', 'X', 'Ni'])).toBeNull();
});

test('a part of a known word names it', () => {
  expect(nearest('enthalpy', quantities)).toBe('mixingEnthalpy');
  expect(nearest('mis', quantities)).toBeNull();
});

test('what is near to nothing has no near miss, nor has an endless word', () => {
  expect(nearest('hardness', quantities)).toBeNull();
  expect(nearest('', quantities)).toBeNull();
  expect(nearest('d'.repeat(1_000_000), quantities)).toBeNull();
});

test('the nearest of several is taken, and of equally near ones the first', () => {
  expect(nearest('costs', ['costly', 'cost'])).toBe('cost');
  expect(nearest('maxx', ['max', 'maxy'])).toBe('max');
});

// Known values of the measure (restricted Damerau–Levenshtein), by hand.
test('edit distances follow the definition', () => {
  expect(editDistance('', 'abc')).toBe(3);
  expect(editDistance('kitten', 'sitting')).toBe(3);
  expect(editDistance('ca', 'ac')).toBe(1);
  expect(editDistance('ca', 'abc')).toBe(3);
});

test('the distance is symmetric, zero only for equal words, and never above the longer length', () => {
  const word = fc.string({ maxLength: 8, unit: fc.constantFrom('a', 'b', 'c') });
  fc.assert(
    fc.property(word, word, (left, right) => {
      const distance = editDistance(left, right);
      expect(distance).toBe(editDistance(right, left));
      expect(distance === 0).toBe(left === right);
      expect(distance).toBeLessThanOrEqual(Math.max(left.length, right.length));
    }),
  );
});
