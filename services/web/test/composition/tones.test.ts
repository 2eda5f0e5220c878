import { symbols } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { tones } from '../../src/composition/tones.ts';

test('every element with data has a tone', () => {
  expect(symbols.filter((symbol) => !(tones[symbol]! >= 0 && tones[symbol]! <= 11))).toEqual([]);
});

// Alloys named throughout the literature on multi-principal-element alloys.
test.each([
  'AlCoCrFeNi',
  'AlCoCrCuFeNi',
  'CoCrFeMnNi',
  'CoCrCuFeNi',
  'CoCrFeMoNi',
  'AlCrCuFeMnNi',
  'CrFeNiTiV',
  'MoNbTaW',
  'MoNbTaVW',
  'HfNbTaTiZr',
  'CrMoNbTaVW',
  'AlCrNbTiVZr',
])('neighbours in the bar of %s lie at least three tones apart', (alloy) => {
  const shown = (alloy.match(/[A-Z][a-z]?/g) ?? []).sort().map((symbol) => tones[symbol]!);
  const steps = shown.slice(1).map((tone, index) => Math.abs(tone - shown[index]!));
  expect(Math.min(...steps)).toBeGreaterThanOrEqual(3);
  expect(new Set(shown).size).toBe(shown.length);
});
