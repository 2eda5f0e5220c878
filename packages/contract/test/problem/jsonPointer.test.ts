import { expect, test } from 'vitest';
import { jsonPointer, placeInWords } from '../../src/problem/jsonPointer.ts';

// The examples of RFC 6901, section 5.
test('the escapes are those of RFC 6901', () => {
  expect(jsonPointer([])).toBe('');
  expect(jsonPointer(['foo', 0])).toBe('/foo/0');
  expect(jsonPointer([''])).toBe('/');
  expect(jsonPointer(['a/b'])).toBe('/a~1b');
  expect(jsonPointer(['m~n'])).toBe('/m~0n');
});

test('an escape is not escaped again', () => {
  expect(jsonPointer(['~1'])).toBe('/~01');
});

test('a place reads as a person would say it', () => {
  expect(placeInWords(['fractions', 'each', 'Al', 'max'])).toBe('fractions.each.Al.max');
  expect(placeInWords(['limits', 0, 'min'])).toBe('limits[0].min');
  expect(placeInWords([])).toBe('The request');
});
