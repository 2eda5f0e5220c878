import type { Explanation, Neighbour, PhaseEstimate } from '@tiegel/contract';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { AlloyState } from '../../src/alloy/state/alloyState.ts';

beforeEach(() => {
  vi.resetModules();
  vi.stubGlobal('navigator', { language: 'en' });
});
afterEach(() => vi.unstubAllGlobals());

const phase = { likely: ['other'], basis: 'ok' } as Partial<PhaseEstimate>;
const explained = (part: object): Explanation => ({
  ...({
    phase,
    nearest: [],
    criteria: {},
    compounds: null,
    demixing: null,
    ordering: null,
  } as object as Explanation),
  conditions: { annealTemperature: 1273.15 },
  ...part,
});

/** What is said of one part of the page, with the sign under which it stands. */
async function saidOf(at: string, part: object, alloy: Partial<AlloyState> = {}) {
  const { argumentsOf } = await import('../../src/alloy/verdict/argumentsOf.ts');
  const state = {
    ...{ composition: { Co: 50, Ni: 50 }, symbols: ['Co', 'Ni'], conditions: {}, values: {} },
    ...{ quantities: [], elements: [], evidence: null, explanation: explained(part) },
    ...alloy,
  } as never;
  return argumentsOf(state)
    .filter((one) => one.at === at)
    .map(({ sign, words }) => `${sign}: ${words}`);
}

const compounds = (hullDistance: number, ...formulas: string[]) => ({
  compounds: { hullDistance, competing: formulas.map((formula) => ({ formula, fraction: 0.5 })) },
});

test('the verdict on compounds turns at the error of the model, and its number tells why', async () => {
  const said = (distance: number) => saidOf('competes', compounds(distance, 'CrFe', 'Ni'));
  expect(await said(-9.97)).toEqual([
    'open: Whether compounds such as CrFe form, a simple model cannot tell: 9.97 kJ/mol is within its error of 10.',
  ]);
  expect(await said(-10.02)).toEqual([
    'for: In a simple model no compound forms, by 10.02 kJ/mol; it may still separate into two solutions.',
  ]);
  expect(await said(12.04)).toEqual([
    'against: In a simple model compounds such as CrFe are preferred, by 12.0 kJ/mol.',
  ]);
});

test('where only elements compete nothing is called a compound', async () => {
  const said = (distance: number) => saidOf('competes', compounds(distance, 'Ag', 'Fe'));
  expect(await said(16)).toEqual([
    'against: In a simple model it separates into its elements, by 16.0 kJ/mol.',
  ]);
  expect(await said(4)).toEqual([
    'open: Whether it separates into its elements, a simple model cannot tell: 4.0 kJ/mol is within its error of 10.',
  ]);
});

const ordering = { temperature: 1620, ratioToMelting: 0.93, words: 'It would order, were it bcc.' };
const reported = (phases: string) =>
  ({
    distance: 0,
    own: false,
    melt: null,
    methods: [],
    reports: [{ phases, references: 3 }],
  }) as never as Neighbour;

test('order of a bcc lattice speaks against one phase only where fcc is not what is likeliest or known', async () => {
  const against = ['against: It would order, were it bcc. A weak hint of more phases.'];
  const open = ['open: It would order, were it bcc. But fcc is likelier.'];
  const likely = (...classes: string[]) => ({ ordering, phase: { ...phase, likely: classes } });
  expect(await saidOf('competes', likely('fcc', 'other'))).toEqual(open);
  expect(await saidOf('competes', likely('other', 'fcc'))).toEqual(against);
  expect(await saidOf('competes', { ...likely('other'), nearest: [reported('FCC')] })).toEqual(open);
  expect(await saidOf('competes', { ...likely('fcc'), nearest: [reported('BCC+B2')] })).toEqual(against);
});

test('a demixing temperature just above the anneal is told so that it lies above', async () => {
  const said = (temperature: number) =>
    saidOf('competes', { demixing: { temperature, words: 'It would separate.' } });
  expect(await said(1274.4)).toEqual([
    'open: It would separate. The anneal, 1273 K (1000 °C), lies below 1274 K; on published alloys this has predicted nothing.',
  ]);
  expect((await said(1501))[0]).toContain('lies below; on');
  expect(await said(1270)).toEqual([]);
});

const rule = (id: string, part: object) => ({
  ...{ id, name: id, positiveClass: 'a σ phase', predicts: null, predictsSecondPhase: true },
  ...{ tp: null, fp: null },
  ...part,
});

test('a rule that expects a second phase speaks against one, with its record, and only where it is met', async () => {
  const records = [
    rule('Untested', {}),
    rule('Tested', { positiveClass: 'a Laves phase', tp: 10, fp: 96 }),
    rule('For one phase', { predictsSecondPhase: false }),
  ];
  const said = (verdict: boolean | null) =>
    saidOf(
      'criteria',
      { criteria: { Untested: verdict, Tested: verdict, 'For one phase': verdict } },
      { evidence: { criteria: records, phaseEstimate: { bestRule: null } } as never },
    );
  expect(await said(true)).toEqual([
    'against: Untested expects a σ phase: not tested on published alloys.',
    'against: Tested expects a Laves phase: right for 10 of the 106 published alloys of which it expects this.',
  ]);
  expect(await said(false)).toEqual([]);
  expect(await said(null)).toEqual([]);
});
