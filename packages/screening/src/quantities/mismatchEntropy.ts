import type { Quantity } from '../definition/quantity.ts';
import {
  column,
  divide,
  type Expression,
  elementPower,
  linear,
  pairProduct,
  pairs,
  plus,
  productOfTwo,
  squaredDifference,
  sumOfTwo,
  times,
} from '../formula/expression.ts';

/** Packing fractions ξ of bcc and of close packing: the value is the mean of both. */
const PACKINGS = [0.68, 0.74] as const;

const diameter = column('metallicRadius'); // radii do: only ratios of sizes enter
const moment = (order: number) => linear(elementPower(diameter, order));
const first = divide(pairs(pairProduct(sumOfTwo(diameter), squaredDifference(diameter))), moment(3));
const second = times(
  divide(moment(2), times(moment(3), moment(3))),
  pairs(pairProduct(productOfTwo(diameter), squaredDifference(diameter))),
);

/** The factors of y₁ and y₂ at a packing ξ, y₃ eliminated. */
function factorsAt(packing: number): [first: number, second: number] {
  const zeta = 1 / (1 - packing);
  const ofThird = 0.5 * (zeta - 1) * (zeta - 3) + Math.log(zeta);
  return [1.5 * (zeta ** 2 - 1) - ofThird, 1.5 * (zeta - 1) ** 2 - ofThird];
}

function formula(): Expression {
  const [loose, close] = PACKINGS.map(factorsAt) as [[number, number], [number, number]];
  return plus(times((loose[0] + close[0]) / 2, first), times((loose[1] + close[1]) / 2, second));
}

/**
 * Mismatch entropy S_σ/k, no unit: the excess entropy of mixing hard spheres of diameters d,
 *   S_σ/k = 1.5(ζ²−1)y₁ + 1.5(ζ−1)²y₂ − (0.5(ζ−1)(ζ−3) + ln ζ)(1−y₃),   ζ = 1/(1−ξ),
 *   y₁ = Σᵢ<ⱼ (dᵢ+dⱼ)(dᵢ−dⱼ)² cᵢcⱼ/σ₃,   y₂ = σ₂/σ₃² Σᵢ<ⱼ dᵢdⱼ(dᵢ−dⱼ)² cᵢcⱼ,   y₃ = σ₂³/σ₃²,
 *   σₖ = Σ cᵢdᵢᵏ,   the mean of the packings ξ = 0.68 and 0.74; 0 for equal sizes.
 *
 * y₁ + y₂ + y₃ = 1 (multiply the squares out), so 1 − y₃ is formed as y₁ + y₂: that cannot cancel,
 * and one size gives exactly 0.
 * @source Mansoori, Carnahan, Starling & Leland, J. Chem. Phys. 54 (1971) 1523; for alloys Takeuchi
 *   & Inoue, Mater. Trans. JIM 41 (2000) 1372 (equations from memory)
 */
export const mismatchEntropy: Quantity = {
  id: 'mismatchEntropy',
  name: 'Mismatch entropy',
  symbol: 'S_σ/k',
  unit: '',
  formula: formula(),
  notation:
    'S_σ/k = 1.5 (ζ²−1) y₁ + 1.5 (ζ−1)² y₂ − (0.5 (ζ−1)(ζ−3) + ln ζ)(1−y₃), ζ = 1/(1−ξ), mean of ξ = 0.68 and 0.74',
  meaning:
    'What unequal sizes add to the entropy of hard spheres; large where the atoms do not fit one lattice.',
  range: { min: 0 },
  decimals: 4,
  source: {
    authors: 'Mansoori et al.; Takeuchi & Inoue',
    year: 2000,
    where: 'J. Chem. Phys. 54, 1523; Mater. Trans. JIM 41, 1372',
    checked: 'from memory',
  },
  caution: 'A liquid of hard spheres, not a crystal. It belongs to the radius set, as δ does.',
};
