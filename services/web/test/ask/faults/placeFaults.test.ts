import { type ProblemError, searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { type Draft, emptyDraft, letRow, limitRow, rankRow } from '../../../src/ask/draft/draft.ts';
import { specificationOf } from '../../../src/ask/draft/specificationOf.ts';
import { placeFaults } from '../../../src/ask/faults/placeFaults.ts';

const { check } = searchSpecificationFor({ quantities, elements: symbols });
const draft: Draft = {
  ...emptyDraft,
  marks: { Al: 'pool', Co: 'pool', Cr: 'pool', Fe: 'require', Ni: 'pool', Ti: 'forbid' },
};

/** What stands at each field once the contract's own check has read what the form wrote. */
function faultsOf(part: Partial<Draft>) {
  const whole = { ...draft, ...part };
  const written = specificationOf(whole);
  try {
    check(written.specification);
    return placeFaults(whole, written, []);
  } catch (error) {
    return placeFaults(whole, written, (error as ProblemError).faults);
  }
}

test('a right form has no fault', () => {
  expect(faultsOf({})).toEqual(new Map());
});

test.each<[string, Partial<Draft>, string]>([
  ['bounds of all that cross', { bounds: { min: '40', max: '30' } }, '/fractions'],
  ['bounds of one element that cross', { each: { Al: { min: '30', max: '10' } } }, '/fractions/each/Al'],
  ['a bound above 100', { each: { Al: { min: '', max: '120' } } }, '/fractions/each/Al/max'],
  ['a number of elements that is not whole', { components: { min: '4.5', max: '5' } }, '/components/min'],
  ['a number of elements that is missing', { components: { min: '', max: '5' } }, '/components/min'],
  [
    'a limit that crosses, after one that is not used yet',
    { limits: [limitRow('omega'), limitRow('density', { min: '9', max: '8' })] },
    '/limits/1',
  ],
  ['no ranking', { rank: [] }, '/rank'],
  ['a target that is missing', { rank: [rankRow('density', { prefer: 'target' })] }, '/rank/0/prefer/target'],
  [
    'an anchor that is missing',
    { rank: [rankRow('density', { from: '1', to: '2' }), rankRow('omega', { prefer: 'high', from: '1' })] },
    '/rank/1/to',
  ],
  ['more than can be kept', { keep: '1000001' }, '/keep'],
  ['too many of each system', { keepPerSystem: '21' }, '/keepPerSystem'],
  ['a number that cannot be read', { keep: 'all' }, '/keep'],
])('%s stands at its field', (_, part, field) => {
  expect([...faultsOf(part).keys()]).toEqual([field]);
});

test('a field is called what it is for, and its numbers are printed', () => {
  const wordsOf = (part: Partial<Draft>) => [...faultsOf(part).values()].flat().join(' ');
  expect(wordsOf({ components: { min: '5.5', max: '6' } })).toMatch(
    /^The smallest number of elements is 5\.5,/,
  );
  expect(wordsOf({ keep: '1000000000' })).toMatch(
    /^The number of candidates to keep is 1,000,000,000; it must be at most 1,000,000\./,
  );
});

test('all that is wrong is told at once', () => {
  const faults = faultsOf({
    keep: 'all',
    bounds: { min: '40', max: '30' },
    limits: [limitRow('density', { min: '9', max: '8' })],
  });
  expect([...faults.keys()].sort()).toEqual(['/fractions', '/keep', '/limits/0']);
});

test('a quantity is called by its name, not by its id', () => {
  const fault = {
    code: 'specification/bounds-crossed',
    pointer: '/limits/0',
    detail: 'valenceElectronConcentration: no.',
    remedy: 'Yes.',
  } as const;
  const limited = { ...draft, limits: [limitRow('valenceElectronConcentration', { min: '1' })] };
  const placed = placeFaults(limited, specificationOf(limited), [fault], quantities);
  expect(placed.get('/limits/0')).toEqual(['Valence electron concentration: no. Yes.']);
});

test('what is ranked by an expression that has no value yet says so, and names of people keep their capital', () => {
  const [stiffness] = quantities.filter(({ id }) => id === 'youngsModulus');
  const unknown = (detail: string) =>
    ({
      code: 'quantity/unknown',
      pointer: '/rank/0/quantity',
      detail,
      remedy: 'Use one of these: youngsModulus, density.',
    }) as const;
  const ranked = { ...draft, lets: [letRow('merit', 'densty')], rank: [rankRow('merit')] };
  const saidOf = (detail: string) =>
    placeFaults(ranked, specificationOf(ranked), [unknown(detail)], quantities).get('/rank/0/quantity');
  expect(saidOf('There is no quantity "merit".')).toEqual([
    '“merit” has no value yet: mend its formula, under the expressions of one’s own.',
  ]);
  expect(saidOf('There is no quantity "other".')).toEqual([
    `There is no quantity "other". Use one of these: ${stiffness!.name}, density.`,
  ]);
});

test('a fault that begins with an expression of one’s own keeps its case', () => {
  const lets = [letRow('merit', 'density / 4')];
  const faults = faultsOf({ lets, limits: [limitRow('merit', { min: '9', max: '8' })] });
  expect([...faults.values()].flat().join(' ')).toMatch(/^merit: the lower bound 9/);
});
