import type { Quantity } from '../definition/quantity.ts';
import {
  atMost,
  choose,
  constant,
  divide,
  greater,
  minus,
  pairColumn,
  pairProduct,
  pairs,
  squareRoot,
  times,
} from '../formula/expression.ts';

/** What is smaller beside the mean square is rounding; the table of whole kJ/mol gives more on any grid. */
const ROUNDING = 1e-12;

const interaction = pairProduct(constant(4), pairColumn('mixingEnthalpy')); // kJ/mol
const weight = pairs(constant(1));
const mean = divide(pairs(interaction), weight);
const meanSquare = divide(pairs(pairProduct(interaction, interaction)), weight);
const variance = minus(meanSquare, times(mean, mean));

/**
 * Scatter of the pair enthalpies (kJ/mol), weighted by how often the pairs meet:
 *   √( Σᵢ<ⱼ wᵢⱼ (4Hᵢⱼ − ⟨4H⟩)² ),   wᵢⱼ = cᵢcⱼ/Σₖ<ₗ cₖcₗ,   ⟨4H⟩ = Σᵢ<ⱼ wᵢⱼ 4Hᵢⱼ.
 * A pure element has no pair and no value. Formed as mean square less square of the mean, which
 * cancels where all pairs are alike: what is left there is rounding and set to 0.
 * @source ours, no source
 */
export const pairEnthalpyScatter: Quantity = {
  id: 'pairEnthalpyScatter',
  name: 'Scatter of the pair enthalpies',
  symbol: 'σ_H',
  unit: 'kJ/mol',
  formula: choose(atMost(variance, times(ROUNDING, meanSquare)), 0, squareRoot(greater(0, variance))),
  notation: 'σ_H = √( Σᵢ<ⱼ wᵢⱼ (4 Hᵢⱼ − ⟨4 H⟩)² ), wᵢⱼ = cᵢcⱼ / Σₖ<ₗ cₖcₗ',
  meaning:
    'How unequal the pairs are. Where it is large some elements seek each other’s company and others avoid it, whatever the mean says.',
  range: { min: 0 },
  decimals: 1,
  source: {
    authors: 'Standard deviation over the pairs',
    year: null,
    where: 'this project',
    checked: 'ours, no source',
  },
  caution: 'No published threshold goes with it.',
};
