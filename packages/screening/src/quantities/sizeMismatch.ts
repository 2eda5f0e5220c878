import type { Quantity } from '../definition/quantity.ts';
import { constant, divide, linear, squareRoot, times, variance } from '../formula/expression.ts';

/**
 * Size mismatch δ (%), the relative spread of the metallic radii r (pm), c mole fractions:
 *   δ = 100 √( Σ cᵢ (1 − rᵢ/r̄)² ),   r̄ = Σ cᵢ rᵢ.
 * δ belongs to its radius set: another set gives CoCrFeMnNi 1.1 instead of 3.3 %, most of it manganese's radius.
 *
 * The variance is formed as Σᵢ<ⱼ cᵢcⱼ(rᵢ − rⱼ)², which equals Σ cᵢrᵢ² − r̄² but does not
 * cancel: for CoCrFeNi the difference of squares is wrong by 7e-12, more than the 1e-12
 * by which a point counts as lying on a limit; and equal radii give exactly 0.
 * @source Zhang, Zhou, Lin, Chen & Liaw, Adv. Eng. Mater. 10 (2008) 534 (equation from memory)
 */
export const sizeMismatch: Quantity = {
  id: 'sizeMismatch',
  name: 'Size mismatch',
  symbol: 'δ',
  unit: '%',
  formula: times(
    constant(100, '%'),
    divide(
      squareRoot(variance('metallicRadius')), // pm
      linear('metallicRadius'), // pm
    ),
  ),
  notation: 'δ = 100 √( Σ cᵢ (1 − rᵢ/r̄)² ), r̄ = Σ cᵢ rᵢ',
  meaning: 'How far the atoms differ in size; a large spread strains the lattice and favours several phases.',
  range: { min: 0 },
  decimals: 2,
  source: {
    authors: 'Zhang et al.',
    year: 2008,
    where: 'Adv. Eng. Mater. 10, 534',
    checked: 'from memory',
  },
  caution: 'A threshold on δ holds only for the radius set that it was found with.',
};
