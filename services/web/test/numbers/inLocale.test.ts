import { afterEach, beforeEach, expect, test, vi } from 'vitest';

let inLocale: typeof import('../../src/numbers/inLocale.ts').inLocale;
let answerInLocale: typeof import('../../src/numbers/inLocale.ts').answerInLocale;
beforeEach(async () => {
  vi.stubGlobal('navigator', { language: 'de-DE' });
  vi.resetModules();
  ({ inLocale, answerInLocale } = await import('../../src/numbers/inLocale.ts'));
});
afterEach(() => {
  vi.unstubAllGlobals();
  // Formats are kept by module: files that follow have those of their own language.
  vi.resetModules();
});

test.each([
  ['size mismatch ≤ 6.6 %, cost ≤ 17 EUR/kg', 'size mismatch ≤ 6,6 %, cost ≤ 17 EUR/kg'],
  ['−11.6 < ΔH < 3.2 kJ/mol, γ < 1.175', '−11,6 < ΔH < 3,2 kJ/mol, γ < 1,175'],
  ['AUC 0.76 (95 %: 0.70–0.83; a coin: 0.50).', 'AUC 0,76 (95 %: 0,70–0,83; a coin: 0,50).'],
  ['38,494 compositions, about 1,234.', '38.494 compositions, about 1.234.'],
  ['off by 0.00064 at.%', 'off by 0,00064 at.%'],
])('%s', (text, printed) => {
  expect(inLocale(text)).toBe(printed);
});

test('formulas, dois and versions stay as they are', () => {
  for (const text of ['CrFeNiTi0.2 and Al0.5CoCrFeNi', 'doi 10.1016/j.msea.2018.12.020', 'version 1.2.3'])
    expect(inLocale(text)).toBe(text);
});

test('of an answer only sentences are written anew', () => {
  const answer = { name: 'Trial 0.5', words: 'At 0.5 K.', value: 0.5, items: [{ trust: '0.50', id: '1.5' }] };
  expect(answerInLocale(answer)).toEqual({
    ...{ name: 'Trial 0.5', words: 'At 0,5 K.', value: 0.5, items: [{ trust: '0,50', id: '1.5' }] },
  });
});
