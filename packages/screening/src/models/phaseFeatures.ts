import { columns, pairColumns } from '@tiegel/elements';
import {
  column,
  constant,
  type ElementTerm,
  type Expression,
  elementProduct,
  elementSum,
  entropy,
  linear,
  type PairTerm,
  pairColumn,
  pairProduct,
  pairSum,
  pairs,
  plus,
  squaredDifference,
  squareRoot,
  times,
} from '../formula/expression.ts';

/**
 * Element columns whose mean over an alloy the phase estimate knows. Each has a value for every
 * element of the data, so the estimate is never missing for want of one; melting temperature and
 * moduli (which carbon lacks) did not help beside them.
 */
const meanColumns = [
  'atomicMass',
  'density',
  'boilingTemperature',
  'metallicRadius',
  'paulingElectronegativity',
  'valenceElectrons',
  'miedemaPotential',
  'miedemaElectronDensity',
  'miedemaSurface',
];

/**
 * Columns whose spread over an alloy the phase estimate knows, with a floor in the column's unit:
 * how unlike the atoms are in cohesion (boiling temperature) and in size (surface, V^⅔). Those of
 * the other columns did not help beside these two. A plain root rises without bound where all
 * atoms are alike, and a trace would move it; the floors are a third of what alloys have.
 */
const spreadColumns = [
  { id: 'boilingTemperature', floor: 150 },
  { id: 'miedemaSurface', floor: 0.15 },
];

/** One input of the phase estimate: a mean over the atoms, a spread of them, a sum over their pairs, or the entropy. */
export type PhaseFeature = { id: string; unit: string } & (
  | { over: 'atoms'; term: ElementTerm }
  | { over: 'spread'; term: PairTerm; floor: number }
  | { over: 'pairs'; term: PairTerm }
  | { over: 'shares' }
);

const unitOf = (id: string) => [...columns, ...pairColumns].find((one) => one.id === id)!.unit;
const square = (unit: string) => (unit === '' ? '' : `${unit} ${unit}`);

/** The interaction parameter 4H of a pair, as in the mixing enthalpy. */
const interaction = pairProduct(constant(4), pairColumn('mixingEnthalpy'));

/**
 * What the phase estimate is computed from, in the order of its coefficients: means and two spreads
 * of element columns, −Σ c ln c, the mixing enthalpy, and Σᵢ<ⱼ cᵢcⱼ(4Hᵢⱼ)², which tells how far pairs
 * pull apart. A weighted sum of them is one linear and one pair sum, the entropy and two roots, whatever
 * the number of means; and a trace of an element moves none of them much, as it moves extremes and
 * counts of elements.
 */
export const phaseFeatures: readonly PhaseFeature[] = [
  ...meanColumns.map(
    (id): PhaseFeature => ({ id: `mean ${id}`, unit: unitOf(id), over: 'atoms', term: column(id) }),
  ),
  ...spreadColumns.map(
    ({ id, floor }): PhaseFeature => ({
      id: `spread ${id}`,
      unit: unitOf(id),
      over: 'spread',
      term: squaredDifference(column(id)),
      floor,
    }),
  ),
  { id: 'entropy', unit: '', over: 'shares' },
  { id: 'mixingEnthalpy', unit: unitOf('mixingEnthalpy'), over: 'pairs', term: interaction },
  {
    id: 'squared pair enthalpies',
    unit: square(unitOf('mixingEnthalpy')),
    over: 'pairs',
    term: pairProduct(interaction, interaction),
  },
];

/** A feature as a formula of its own. */
export function featureFormula(feature: PhaseFeature): Expression {
  switch (feature.over) {
    case 'atoms':
      return linear(feature.term);
    case 'spread':
      return squareRoot(plus(pairs(feature.term), constant(feature.floor ** 2, square(feature.unit))));
    case 'pairs':
      return pairs(feature.term);
    case 'shares':
      return entropy();
  }
}

/** offset + Σ weightₖ featureₖ, with each weight in the reciprocal unit of its feature. */
export function weightedFeatures(weights: readonly number[], offset: number): Expression {
  const atoms: ElementTerm[] = [];
  const ofPairs: PairTerm[] = [];
  let sum: Expression = constant(offset);
  phaseFeatures.forEach((feature, k) => {
    const weight = constant(weights[k]!, reciprocal(feature.unit));
    if (feature.over === 'atoms') atoms.push(elementProduct(weight, feature.term));
    else if (feature.over === 'pairs') ofPairs.push(pairProduct(weight, feature.term));
    else sum = plus(sum, times(weight, featureFormula(feature)));
  });
  sum = plus(sum, linear(atoms.reduce(elementSum)));
  return plus(sum, pairs(ofPairs.reduce(pairSum)));
}

function reciprocal(unit: string): string {
  return unit === '' ? '' : `1/(${unit})`;
}
