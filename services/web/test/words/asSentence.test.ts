import { expect, test } from 'vitest';
import { asSentence } from '../../src/words/asSentence.ts';

const nbsp = '\u00a0';

test.each([
  ['density ≤ 8 g/cm³, lowest cost', `Density ≤${nbsp}8${nbsp}g/cm³, lowest cost`],
  [
    '5–35 at.% in steps of 5 (Al ≤ 15, Cr ≥ 15)',
    `5–35 at.% in steps of 5 (Al${nbsp}≤${nbsp}15, Cr${nbsp}≥${nbsp}15)`,
  ],
  ['mixing enthalpy ≥ −15 kJ/mol', `Mixing enthalpy ≥${nbsp}−15${nbsp}kJ/mol`],
  ['mixing enthalpy −15 to 5 kJ/mol', 'Mixing enthalpy −15 to 5 kJ/mol'],
])('%s stays together where it is one number', (phrase, shown) => {
  expect(asSentence(phrase)).toBe(shown);
});
