import type { Quantity } from '../definition/quantity.ts';
import {
  column,
  divide,
  type Expression,
  greatest,
  least,
  linear,
  minus,
  plus,
  power,
  squareRoot,
} from '../formula/expression.ts';

/**
 * The share of its surroundings that an atom of this radius takes up among atoms of the mean
 * radius: 1 − √(((r + r̄)² − r̄²)/(r + r̄)²), where the quotient is 1 − (r̄/(r + r̄))².
 */
function solidAngle(radius: Expression): Expression {
  const sine = divide(1, plus(1, divide(radius, linear('metallicRadius'))));
  return minus(1, squareRoot(minus(1, power(sine, 2))));
}

/**
 * Solid-angle ratio γ, no unit, of the smallest to the largest atom among atoms of the mean
 * radius r̄ = Σ cᵢ rᵢ (pm):
 *   γ = ω(r_min)/ω(r_max),   ω(r) = 1 − √(((r + r̄)² − r̄²)/(r + r̄)²);   1 for equal radii.
 * @source Wang, Huang, Yang, Wang & Liu, Scr. Mater. 94 (2015) 28 (equation from memory)
 */
export const gamma: Quantity = {
  id: 'gamma',
  name: 'Solid-angle ratio',
  symbol: 'γ',
  unit: '',
  formula: divide(
    solidAngle(least(column('metallicRadius'))),
    solidAngle(greatest(column('metallicRadius'))),
  ),
  notation: 'γ = ω(r_min) / ω(r_max), ω(r) = 1 − √( ((r + r̄)² − r̄²) / (r + r̄)² )',
  meaning:
    'How unequal the packing around the smallest and the largest atom is; below about 1.175 a solution is expected.',
  range: { min: 1 },
  decimals: 3,
  source: { authors: 'Wang et al.', year: 2015, where: 'Scr. Mater. 94, 28', checked: 'from memory' },
  caution:
    'It knows the extremes, not their amounts: a trace of a large atom counts fully. It belongs to the radius set, as δ does.',
};
