import { afterEach, beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => {
  vi.resetModules();
  vi.stubGlobal('navigator', { language: 'en' });
});
afterEach(() => vi.unstubAllGlobals());

test('a system without a published alloy is told as lacking in the table, not as unknown', async () => {
  const { phasesInWords } = await import('../../../src/look/systems/phasesInWords.ts');
  expect(phasesInWords(null)).toBe('none in the table here');
  expect(phasesInWords(null, { melts: 1 })).toBe('none in the table here; 1 melt here');
  expect(phasesInWords(null, { own: 2, melts: 1 })).toBe(
    'none in the table here; 2 alloys of yours; 1 melt here',
  );
});
