import { expect, test } from 'vitest';
import { tied } from '../../src/words/tied.ts';

test.each([
  ['12 ≤ ΔS ≤ 17.5 J/(mol K)', '12~≤~ΔS~≤~17.5~J/(mol~K)'],
  ['−11.6 < ΔH < 3.2 kJ/mol, δ < 6.6 %', '−11.6~<~ΔH~<~3.2~kJ/mol, δ~<~6.6~%'],
  ['off by ± 45 % at 293 K', 'off by ±~45~% at 293~K'],
])('%s breaks only where it reads well', (text, set) => {
  expect(tied(text).replaceAll('\u00a0', '~')).toBe(set);
});
