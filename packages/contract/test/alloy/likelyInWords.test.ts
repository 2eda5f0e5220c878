import { expect, test } from 'vitest';
import { likelyInWords, type PhaseEstimate } from '../../src/index.ts';

const estimate = (part: Partial<PhaseEstimate>): PhaseEstimate => ({
  ...{ singleSolution: 0.5, fcc: 0.4, bcc: 0.1, both: 0.1, other: 0.4, basis: 'ok', nearestDistance: 0.1 },
  ...{ likely: ['fcc'], words: '', trust: '' },
  ...part,
});

test('the likely classes make one plain sentence', () => {
  const said = (...likely: PhaseEstimate['likely'] & object) => likelyInWords(estimate({ likely }));
  expect(said('fcc')).toBe('Probably one uniform metal phase (fcc).');
  expect(said('bcc', 'fcc')).toBe('Probably one uniform metal phase (bcc or fcc).');
  expect(said('other')).toBe('Probably more phases or compounds.');
  expect(said('fcc', 'both')).toBe('Perhaps one uniform metal phase (fcc), perhaps two phases, fcc and bcc.');
  const none = estimate({ likely: null, basis: 'none', singleSolution: null });
  expect(likelyInWords(none)).toBe('Nothing can be said of its phases.');
});
