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
  times,
} from '../expression.ts';

/**
 * Element columns whose mean and variance over an alloy the phase estimate knows. Each has a value
 * for every element of the data, so the estimate is never missing for want of one; melting
 * temperature and moduli (which carbon lacks) did not help beside them.
 */
const featureColumns = [
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

/** One input of the phase estimate: a mean over the atoms, a sum over their pairs, or the entropy. */
export type PhaseFeature = { id: string; unit: string } & (
  | { over: 'atoms'; term: ElementTerm }
  | { over: 'pairs'; term: PairTerm }
  | { over: 'shares' }
);

const unitOf = (id: string) => [...columns, ...pairColumns].find((one) => one.id === id)!.unit;
const square = (unit: string) => (unit === '' ? '' : `${unit} ${unit}`);

/** The interaction parameter 4H of a pair, as in the mixing enthalpy. */
const interaction = pairProduct(constant(4), pairColumn('mixingEnthalpy'));

/**
 * What the phase estimate is computed from, in the order of its coefficients: means and variances of
 * element columns, −Σ c ln c, the mixing enthalpy, and Σᵢ<ⱼ cᵢcⱼ(4Hᵢⱼ)², which tells how far pairs
 * pull apart. All but the entropy are polynomials of second degree in the shares: a weighted sum of
 * them is one linear and one pair sum whatever their number, and a trace of an element moves none of
 * them much, as it moves the root of a variance, extremes and counts of elements.
 */
export const phaseFeatures: readonly PhaseFeature[] = [
  ...featureColumns.map(
    (id): PhaseFeature => ({ id: `mean ${id}`, unit: unitOf(id), over: 'atoms', term: column(id) }),
  ),
  ...featureColumns.map(
    (id): PhaseFeature => ({
      id: `variance ${id}`,
      unit: square(unitOf(id)),
      over: 'pairs',
      term: squaredDifference(column(id)),
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
    else sum = plus(sum, times(weight, entropy()));
  });
  sum = plus(sum, linear(atoms.reduce(elementSum)));
  return plus(sum, pairs(ofPairs.reduce(pairSum)));
}

function reciprocal(unit: string): string {
  return unit === '' ? '' : `1/(${unit})`;
}
