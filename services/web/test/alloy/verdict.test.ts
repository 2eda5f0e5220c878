import type { Neighbour, PhaseEstimate } from '@tiegel/contract';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => {
  vi.resetModules();
  vi.stubGlobal('navigator', { language: 'en' });
});
afterEach(() => vi.unstubAllGlobals());

const estimate = (part: Partial<PhaseEstimate>): PhaseEstimate => ({
  ...{ singleSolution: 0.5, fcc: 0.4, bcc: 0.1, both: 0.1, other: 0.4, basis: 'ok', nearestDistance: 0.1 },
  ...{ likely: ['fcc'], words: '', trust: '' },
  ...part,
});
const neighbour = (reports: [string, number][], distance = 0): Neighbour => ({
  ...{ formula: 'CoNi', composition: { Co: 50, Ni: 50 }, distance, phases: reports[0]?.[0] ?? null, doi: [] },
  ...{ own: false, import: null, melt: null, methods: [] },
  reports: reports.map(([phases, references]) => ({ phases, references })),
});

test('an estimate takes a side, or either, or none', async () => {
  const { sideOf } = await import('../../src/alloy/verdict/knownInWords.ts');
  const none = estimate({ likely: null, basis: 'none', singleSolution: null });
  expect([estimate({ likely: ['bcc'] }), estimate({ likely: ['both'] }), none].map(sideOf)).toEqual([
    'one',
    'several',
    null,
  ]);
  expect(sideOf(estimate({ likely: ['fcc', 'other'] }))).toBe('either');
});

test('publications are counted, and what somebody brought in is not called published', async () => {
  const { publishedInWords } = await import('../../src/alloy/verdict/publishedInWords.ts');
  const published = neighbour([
    ['FCC', 17],
    ['FCC+BCC', 3],
  ]);
  expect(publishedInWords([published])).toBe(
    'This alloy is published (as CoNi): FCC in 17 of 20 publications, FCC+BCC in 3.',
  );
  expect(publishedInWords([{ ...neighbour([['B2', 0]]), own: true, import: 3 }])).toBe(
    'You brought this alloy in (as CoNi): B2.',
  );
});

test('what most publications report is known; what they dispute is not', async () => {
  const { knownInWords } = await import('../../src/alloy/verdict/knownInWords.ts');
  const known = (...reports: [string, number][]) => knownInWords(neighbour(reports));
  expect(known(['FCC', 17], ['FCC+BCC', 2], ['Other', 1])).toBe(
    'Known: one uniform metal phase (fcc), in 17 of 20 publications.',
  );
  // One publication reports both.
  expect(
    knownInWords({
      ...neighbour([
        ['FCC', 17],
        ['FCC+BCC', 3],
      ]),
      publications: 19,
    }),
  ).toBe('Known: one uniform metal phase (fcc), in 17 of 19 publications.');
  expect(known(['FCC+B2', 1])).toBe('Known: FCC+B2, in the one publication.');
  expect(known(['FCC', 1], ['BCC', 1])).toBeNull();
});

test('how sure the estimate is comes with what happened to alloys that it rated alike', async () => {
  const { surenessInWords } = await import('../../src/alloy/verdict/surenessInWords.ts');
  const band = { from: 0.4, to: 0.6, count: 39.1, said: 0.5, happened: 0.47 };
  const evidence = { phaseEstimate: { reliability: [band] } } as never;
  expect(surenessInWords(estimate({}), evidence)).toBe(
    'The estimate of one solid solution is 0.50. Of the published alloys that it rated 0.40 to 0.60 without having ' +
      'seen their system, 47 % were (about 39 alloys).',
  );
  expect(surenessInWords(estimate({ basis: 'weak', nearestDistance: 0.18 }), null)).toContain(
    'Its basis is thin: 18.0 % of the atoms differ',
  );
  const far = estimate({ singleSolution: null, nearestDistance: 0.2203 });
  expect(surenessInWords(far, null)).toContain('no basis for an estimate: 22.03 % of the atoms differ');
});

test('what is published is told of the alloy itself, else of the nearest with known phases', async () => {
  const { publishedInWords } = await import('../../src/alloy/verdict/publishedInWords.ts');
  expect(publishedInWords([neighbour([['FCC', 2]])])).toBe(
    'This alloy is published (as CoNi): FCC in both publications.',
  );
  expect(publishedInWords([neighbour([], 0.1), neighbour([['BCC', 1]], 0.125)])).toContain(
    'CoNi, 12.5 % of the atoms apart: BCC in one publication',
  );
  expect(publishedInWords([neighbour([], 0.1)])).toBe(
    'Not in the table of published alloys here, which is a part of what is published.',
  );
});

test('a melt of one’s own is called so, with how it was observed, beside what is published', async () => {
  const { publishedInWords } = await import('../../src/alloy/verdict/publishedInWords.ts');
  const { knownInWords } = await import('../../src/alloy/verdict/knownInWords.ts');
  const melt = {
    ...neighbour([['FCC', 0]]),
    ...{ formula: 'First trial', own: true, melt: 'mk3f', methods: ['X-ray diffraction'] },
  };
  const published = neighbour([['FCC+B2', 2]]);
  expect(publishedInWords([melt, published])).toBe(
    'You melted this alloy (as First trial): FCC, by X-ray diffraction. ' +
      'This alloy is published (as CoNi): FCC+B2 in both publications.',
  );
  expect(publishedInWords([{ ...melt, phases: null, reports: [], methods: [] }])).toBe(
    'You melted this alloy (as First trial): phases not looked at yet.',
  );
  expect(knownInWords(melt)).toBe('Known: one uniform metal phase (fcc), in your own melt.');
});
