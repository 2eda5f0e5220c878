import { expect, test } from 'vitest';
import { nameInSentence } from '../src/index.ts';

test.each([
  ['density', 'Density', 'density'],
  ['allenElectronegativitySpread', 'Electronegativity spread (Allen)', 'electronegativity spread (Allen)'],
  ['youngsModulus', 'Young’s modulus', 'Young’s modulus'],
  ['yieldPerMass', 'yieldPerMass', 'yieldPerMass'],
  ['Merit', 'Merit', 'Merit'],
])('%s, called %s, is %s inside a sentence', (id, name, shown) => {
  expect(nameInSentence(id, name)).toBe(shown);
});
