import { columns } from '@tiegel/elements';
import {
  column,
  constant,
  divide,
  type ElementTerm,
  type Expression,
  elementProduct,
  elementSum,
  entropy,
  linear,
  minus,
  plus,
  squareRoot,
  times,
  variance,
} from '../expression.ts';
import { mixingEnthalpy } from '../quantities/mixingEnthalpy.ts';
import { pairEnthalpyScatter } from '../quantities/pairEnthalpyScatter.ts';

/**
 * Element columns whose mean and spread over an alloy the phase estimate knows, each with its floor,
 * about 0.3 of the mean spread of the published alloys. Each has a value for every element of the
 * data, so the estimate is never missing for want of one; melting temperature and moduli (which
 * carbon lacks) did not help beside them.
 */
const featureColumns: readonly { id: string; floor: number }[] = [
  { id: 'atomicMass', floor: 7 },
  { id: 'density', floor: 0.7 },
  { id: 'boilingTemperature', floor: 140 },
  { id: 'metallicRadius', floor: 2 },
  { id: 'paulingElectronegativity', floor: 0.05 },
  { id: 'valenceElectrons', floor: 0.5 },
  { id: 'miedemaPotential', floor: 0.1 },
  { id: 'miedemaElectronDensity', floor: 0.03 },
  { id: 'miedemaSurface', floor: 0.12 },
];

/** The floor of the scatter of the pair enthalpies, kJ/mol: carbon's pairs are some hundred apart. */
const SCATTER_FLOOR = 50;

/** One input of the phase estimate; `column` where it is the mean of an element column. */
export interface PhaseFeature {
  id: string;
  unit: string;
  formula: Expression;
  column?: string;
}

const unitOfColumn = (id: string) => columns.find((one) => one.id === id)!.unit;

/**
 * √(square + floor²): like the root of the square where that is large, but flat at 0. A plain root
 * rises there without bound, and a trace of carbon in HfTiZr would move the estimate by 0.06.
 */
function softRoot(square: Expression, floor: number, unit: string): Expression {
  return squareRoot(plus(square, times(constant(floor, unit), constant(floor, unit))));
}

/**
 * What the phase estimate is computed from, in the order of its coefficients: means and standard
 * deviations of element columns, −Σ c ln c, mixing enthalpy and the scatter of the pair
 * enthalpies. All vary smoothly when a trace of an element is added: the deviations and the scatter
 * have floors (softRoot), and extremes and counts of elements, which jump, are left out.
 */
export const phaseFeatures: readonly PhaseFeature[] = [
  ...featureColumns.map(({ id }) => ({
    id: `mean ${id}`,
    unit: unitOfColumn(id),
    formula: linear(id),
    column: id,
  })),
  ...featureColumns.map(({ id, floor }) => ({
    id: `spread ${id}`,
    unit: unitOfColumn(id),
    formula: softRoot(variance(id), floor, unitOfColumn(id)),
  })),
  { id: 'entropy', unit: '', formula: entropy() },
  { id: 'mixingEnthalpy', unit: mixingEnthalpy.unit, formula: mixingEnthalpy.formula },
  {
    id: 'pairEnthalpyScatter',
    unit: pairEnthalpyScatter.unit,
    formula: softRoot(
      times(pairEnthalpyScatter.formula, pairEnthalpyScatter.formula),
      SCATTER_FLOOR,
      pairEnthalpyScatter.unit,
    ),
  },
];

/**
 * offset + Σ weightₖ featureₖ, with each weight in the reciprocal unit of its feature. The means
 * become one linear sum, which costs no more than a single mean.
 */
export function weightedFeatures(weights: readonly number[], offset: number): Expression {
  const weight = (k: number) => constant(weights[k]!, reciprocal(phaseFeatures[k]!.unit));
  const means = phaseFeatures.flatMap(({ column: id }, k): ElementTerm[] =>
    id === undefined ? [] : [elementProduct(weight(k), column(id))],
  );
  const others = phaseFeatures.flatMap(({ column: id, formula }, k): Expression[] =>
    id === undefined ? [divide(formula, constant(1 / weights[k]!, phaseFeatures[k]!.unit))] : [],
  );
  const sum = others.reduce((left, right) => plus(left, right), linear(means.reduce(elementSum)));
  return offset < 0 ? minus(sum, -offset) : plus(sum, offset);
}

function reciprocal(unit: string): string {
  return unit === '' ? '' : `1/(${unit})`;
}
