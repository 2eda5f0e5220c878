import type { SearchSpecification } from '@tiegel/contract';

/** Which systems are scored: of every `oneIn` groups of neighbours one, each of `group` systems. */
export interface Sample {
  oneIn: number;
  group: number;
}

/** A search to be measured, and what of it. */
export interface Workload {
  name: string;
  specification: SearchSpecification;
  /** What the plain loop scores, and on what outcomes are compared. */
  sample: Sample;
  /** What a search that leaves regions out goes through; the same where it is not given. */
  pruned?: Sample;
  /** The reference scores of one in so many of those systems up to so many points from the middle. */
  reference: { oneIn: number; points: number };
}

const whole: Sample = { oneIn: 1, group: 1 };
const pool = [
  ...['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni'],
  ...['Pd', 'Re', 'Si', 'Ta', 'Ti', 'V', 'W', 'Y', 'Zn', 'Zr'],
];

/** Six limits that about a quarter of the points meets together; the best 1000 by density. */
function specification(
  name: string,
  components: number,
  step: number,
  given: Partial<SearchSpecification> = {},
): SearchSpecification {
  return {
    version: 1,
    name,
    elements: { pool, require: [], forbid: [] },
    components: { min: components, max: components },
    fractions: { step, min: 5, max: 35, each: {} },
    limits: [
      { quantity: 'sizeMismatch', max: 9.5 },
      { quantity: 'omega', min: 0.8 },
      { quantity: 'valenceElectronConcentration', min: 4, max: 8.6 },
      { quantity: 'mixingEnthalpy', min: -30, max: 8 },
      { quantity: 'density', max: 13 },
      { quantity: 'cost', max: 400 },
    ],
    rank: [{ quantity: 'density', prefer: 'low' }],
    keep: 1000,
    keepPerSystem: 0,
    tally: 'each',
    ...given,
  };
}

/** The numbers of an invented logistic model: a constant, then for ΔH, δ, Ω up to 8, and Δχ. */
export const logistic = [2, 0.1, -0.3, 0.25, -3] as const;
const terms = ['', '*mixingEnthalpy', '*sizeMismatch', '*min(omega, 8)', '*electronegativitySpread'];

/** Two limits more, one of them on the logistic model, and a ranking by three desirabilities. */
const eight = specification('eight-limits', 5, 5);
eight.lets = {
  solution: `1/(1 + exp(-(${logistic.map((number, at) => `(${number})${terms[at]}`).join(' + ')})))`,
};
eight.limits.push({ quantity: 'electronegativitySpread', max: 0.45 }, { quantity: 'solution', min: 0.4 });
eight.rank = [
  { quantity: 'density', prefer: 'low', from: 2, to: 14, weight: 2 },
  { quantity: 'sizeMismatch', prefer: 'low', from: 0, to: 12, shape: 0.5 },
  { quantity: 'cost', prefer: 'low', from: 0, to: 500, weight: 0.5, shape: 2 },
];

/** One limit more, on an expression that no rule rewrites: an exponential, a logarithm and a quotient at every point. */
const anyTree = specification('any-tree', 5, 5);
anyTree.lets = {
  tree: 'exp(mixingEnthalpy / 20) * omega + ln(1 + omega) * valenceElectronConcentration',
};
anyTree.limits.push({ quantity: 'tree', max: 12 });

/** Bounds that differ from element to element, so that hardly two systems have the same points. */
const ownBounds = Object.fromEntries(
  pool.map((symbol, place) => [symbol, { min: place < 10 ? 5 : 10, max: 25 + 5 * (place % 10) }]),
);

/** On the 1 % grid, what about one in a hundred points meets. */
const tight = specification('tight', 5, 1, { tally: 'all' });
tight.limits[0]!.max = 4.5;
tight.limits[4]!.max = 8.2;

export const workloads: readonly Workload[] = [
  {
    name: 'five-percent-5',
    specification: specification('five-percent-5', 5, 5),
    sample: whole,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'one-percent-5',
    specification: specification('one-percent-5', 5, 1),
    sample: { oneIn: 388, group: 4 },
    reference: { oneIn: 1, points: 5000 },
  },
  {
    name: 'five-percent-6',
    specification: specification('five-percent-6', 6, 5),
    sample: { oneIn: 12, group: 64 },
    reference: { oneIn: 100, points: 7000 },
  },
  {
    name: 'eight-limits',
    specification: eight,
    sample: whole,
    reference: { oneIn: 50, points: 2000 },
  },
  {
    name: 'any-tree',
    specification: anyTree,
    sample: whole,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'own-bounds',
    specification: specification('own-bounds', 5, 5, {
      fractions: { step: 5, min: 5, max: 35, each: ownBounds },
    }),
    sample: whole,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'keep-100000',
    specification: specification('keep-100000', 5, 5, { keep: 100_000 }),
    sample: whole,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'full-five-percent-5',
    specification: specification('full-five-percent-5', 5, 5, { tally: 'none' }),
    sample: whole,
    reference: { oneIn: 100, points: 2000 },
  },
  {
    name: 'full-five-percent-6',
    specification: specification('full-five-percent-6', 6, 5, { tally: 'none' }),
    sample: { oneIn: 12, group: 64 },
    pruned: whole,
    reference: { oneIn: 100, points: 7000 },
  },
  {
    name: 'full-one-percent',
    specification: specification('full-one-percent', 5, 1, { tally: 'none' }),
    sample: { oneIn: 388, group: 4 },
    pruned: whole,
    reference: { oneIn: 1, points: 5000 },
  },
  {
    name: 'tight',
    specification: tight,
    sample: { oneIn: 388, group: 4 },
    pruned: { oneIn: 20, group: 1 },
    reference: { oneIn: 1, points: 5000 },
  },
  {
    name: 'loose',
    specification: specification('loose', 5, 1, { tally: 'all' }),
    sample: { oneIn: 388, group: 4 },
    pruned: { oneIn: 20, group: 1 },
    reference: { oneIn: 1, points: 5000 },
  },
];
