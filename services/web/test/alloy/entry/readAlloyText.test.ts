import { expect, test } from 'vitest';
import { readAlloyText } from '../../../src/alloy/entry/readAlloyText.ts';

test('a page sends nobody to the terminal or the API for the elements that have data', () => {
  const [fault] = readAlloyText('Al₂O₃').faults!;
  expect(fault!.detail).toBe('There are no data of O (character 4) (oxygen).');
  expect(fault!.remedy).toBe('Use elements that the page Data shows.');
});
