import { type Fault, ProblemError } from '@tiegel/contract';
import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { question } from '../fixtures/questions.ts';

function faultsOf(request: unknown, { prices = demoPrices as typeof demoPrices | null, most = 1e9 } = {}) {
  try {
    checkSearch(request, { prices }, most);
  } catch (error) {
    if (error instanceof ProblemError) return [...error.faults];
    throw error;
  }
  return [];
}
const brief = (faults: Fault[]) => faults.map(({ code, pointer }) => `${code} ${pointer}`.trim());

// Compositions of 20 steps into 4 parts of 1 to 7: inclusion and exclusion over
// C(19,3) − 4 C(12,3) + 6 C(5,3) = 969 − 880 + 60 = 149; C(5,3) = 10 systems with Ni.
test('systems and points are counted, and the question is put into words', () => {
  const { systems, points, question: words } = checkSearch(question(), { prices: demoPrices }, 1e9);
  expect([systems, points]).toEqual([10, 1490]);
  expect(words).toContain('four of Al Co Cr Fe Ni Ti, with Ni');
});

test('the plan carries data, version of data and conditions, so that a worker needs nothing else', () => {
  const { plan } = checkSearch(question(), { prices: demoPrices }, 1e9);
  expect(plan.facts.symbols).toEqual(['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti']);
  expect(plan.facts.columns.price).toEqual(
    plan.facts.symbols.map((one) => demoPrices.prices[one]!.pricePerKilogram),
  );
  expect(plan.conditions).toMatchObject({ serviceTemperature: 293.15, annealTemperature: 1273.15 });
  expect(plan.dataVersion).toMatch(/^[0-9a-f]{12}$/);
});

test('the words name the currency of the prices in force', () => {
  const asked = question({ limits: [{ quantity: 'cost', max: 30 }] });
  expect(checkSearch(asked, { prices: demoPrices }, 1e9).question).toContain('cost ≤ 30 EUR/kg');
});

test('a request that is wrong in its form is told so, with every fault', () => {
  const wrong = question({ components: 99, rank: [{ quantity: 'densty', prefer: 'low' }] });
  expect(brief(faultsOf(wrong))).toEqual([
    'request/out-of-range /components',
    'quantity/unknown /rank/0/quantity',
  ]);
});

// C(100 − 1, 9): compositions of 1,000 steps into 10 positive parts are C(999, 9), here of a pool of ten.
test('a search that is too large is refused with its count, to the last digit', () => {
  const huge = question({
    elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Nb', 'Ni', 'Ti', 'V'] },
    components: 10,
    fractions: { step: 0.1 },
  });
  const [fault] = faultsOf(huge, { most: 1e13 });
  expect(fault?.code).toBe('search/too-many-points');
  // C(999,9) by exact arithmetic: 999·998·…·991 / 9!
  const product = Array.from({ length: 9 }, (_, k) => BigInt(999 - k)).reduce((a, b) => a * b);
  expect(fault?.detail.replaceAll(',', '')).toContain(`has ${product / 362880n} points; at most ${1e13}`);
});

test('a grid without a point is refused', () => {
  const empty = question({ fractions: { step: 5, min: 5, max: 20 } });
  expect(brief(faultsOf(empty))).toEqual(['search/no-points /fractions']);
});

test('a limit or a ranking by cost without a price names the elements', () => {
  const { Ti: _, Al: __, ...some } = demoPrices.prices;
  const prices = { ...demoPrices, prices: some };
  const asked = question({
    limits: [
      { quantity: 'density', max: 8 },
      { quantity: 'cost', max: 30 },
    ],
    rank: [{ quantity: 'costPerLitre', prefer: 'low' }],
  });
  const faults = faultsOf(asked, { prices });
  expect(brief(faults)).toEqual([
    'search/price-missing /limits/1/quantity',
    'search/price-missing /rank/0/quantity',
  ]);
  for (const { detail } of faults) expect(detail).toContain('Al and Ti');
  expect(faultsOf(question(), { prices })).toEqual([]);
  expect(faultsOf(question(), { prices: null })).toEqual([]);
});

test('a search that needs a value that an element lacks names element and value, for each limit and ranking', () => {
  const asked = question({
    elements: { pool: ['Al', 'C', 'Ni', 'Pr', 'Yb'] },
    components: 3,
    limits: [{ quantity: 'allenElectronegativitySpread', max: 20 }],
    rank: [{ quantity: 'meltingTemperature', prefer: 'high' }],
  });
  const faults = faultsOf(asked);
  expect(brief(faults)).toEqual([
    'search/value-missing /limits/0/quantity',
    'search/value-missing /rank/0/quantity',
  ]);
  expect(faults[0]?.detail).toContain('allen electronegativity, which is not known for Pr and Yb');
  expect(faults[1]?.detail).toContain('melting temperature, which is not known for C.');
});

test('faults of values and of size are told together', () => {
  const asked = question({ limits: [{ quantity: 'cost', max: 30 }] });
  const codes = faultsOf(asked, { prices: null, most: 100 }).map((one) => one.code);
  expect(codes).toEqual(['search/price-missing', 'search/too-many-points']);
});

test('a limit that the bounds of the grid prove unreachable is refused with them', () => {
  const asked = question({ limits: [{ quantity: 'meltingTemperature', min: 5000 }] });
  const [fault] = faultsOf(asked);
  expect(brief(fault ? [fault] : [])).toEqual(['search/limit-unreachable /limits/0']);
  expect(fault?.detail).toMatch(/between \d+ K and \d+ K/);
  const [heavy] = faultsOf(question({ limits: [{ quantity: 'density', min: 50 }] }));
  expect(heavy?.detail).toMatch(/between \d+\.\d\d g\/cm³ and \d+\.\d\d g\/cm³/);
});

test('conditions that are set stand in the plan and in the question, all others keep their defaults', () => {
  const asked = question({ conditions: { serviceTemperature: 1073.15, grainSize: 30 } });
  const { plan, question: words } = checkSearch(asked, { prices: demoPrices }, 1e9);
  expect(plan.conditions).toEqual({
    annealTemperature: 1273.15,
    serviceTemperature: 1073.15,
    strainRate: 1e-3,
    grainSize: 30,
  });
  expect(plan.specification.conditions).toEqual({ serviceTemperature: 1073.15, grainSize: 30 });
  expect(words).toMatch(/service temperature 1073\.15 K, grain size 30 µm$/);
});

test('a condition that a limit or the ranking computes with stands in the question by its value', () => {
  const asked = question({ rank: [{ quantity: 'yieldStrengthFcc', prefer: 'high' }] });
  expect(checkSearch(asked, { prices: demoPrices }, 1e9).question).toMatch(
    /service temperature 293\.15 K, strain rate 0\.001 1\/s, no grain size$/,
  );
});

test('conditions move what is provably out of reach', () => {
  const limits = [{ quantity: 'homologousTemperature', min: 1 }];
  expect(brief(faultsOf(question({ limits })))).toEqual(['search/limit-unreachable /limits/0']);
  expect(faultsOf(question({ limits, conditions: { serviceTemperature: 1800 } }))).toEqual([]);
});

test('a ranking by the phase estimate says where that means nothing, unless such alloys are left out', () => {
  const asked = question({ rank: [{ quantity: 'singlePhaseEstimate', prefer: 'high' }] });
  const { notices } = checkSearch(asked, { prices: demoPrices }, 1e9);
  expect(notices).toEqual([
    expect.stringMatching(
      /^Estimate of one solid solution means nothing of alloys whose distance to nearest published alloy is above 0\.22, and/,
    ),
  ]);
  const merit = { lets: { merit: 'singlePhaseEstimate - density/20' } };
  const byMerit = question({ ...merit, rank: [{ quantity: 'merit', prefer: 'high' }] });
  expect(checkSearch(byMerit, { prices: demoPrices }, 1e9).notices).toEqual(notices);
  const unasked = question({ ...merit, rank: [{ quantity: 'density', prefer: 'low' }] });
  expect(checkSearch(unasked, { prices: demoPrices }, 1e9).notices).toEqual([]);
  const narrowed = { ...asked, keptOnly: [{ quantity: 'nearestDistance', max: 0.22 }] };
  expect(checkSearch(narrowed, { prices: demoPrices }, 1e9).notices).toEqual([]);
});
