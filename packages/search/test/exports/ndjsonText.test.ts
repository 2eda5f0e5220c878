import { expect, test } from 'vitest';
import { ndjsonText } from '../../src/exports/ndjsonText.ts';
import { candidates, exportOf } from '../fixtures/exportOf.ts';

test('the first line is what the rows depend on, each further line one candidate', () => {
  const whole = exportOf(candidates(450));
  const text = [...ndjsonText(whole)].join('');
  expect(text.endsWith('\n')).toBe(true);
  const [first, ...rows] = text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(first).toEqual({ export: JSON.parse(JSON.stringify(whole.about)) });
  expect(rows).toEqual([...candidates(450)]);
});
