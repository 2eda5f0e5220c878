import {
  atMost,
  choose,
  column,
  condition,
  constant,
  divide,
  type Expression,
  elementProduct,
  elementSum,
  exponential,
  linear,
  logarithm,
  negate,
  power,
  times,
} from '../formula/expression.ts';
import { GAS_CONSTANT_J_PER_MOL_K } from '../formula/gasConstant.ts';
import { molarVolume } from '../formula/molarVolume.ts';
import { squaredVolumeMisfit } from './volumeMisfit.ts';

/** What the model must know of a lattice and its dislocations; plain numbers. */
export interface Lattice {
  /** α, line tension of the dislocation in units of μb² */
  lineTension: number;
  /** A_τ and A_E, the sums over the core that make stress and barrier */
  stressFactor: number;
  barrierFactor: number;
  /** M, from shear in a slip system to tension of the polycrystal */
  taylorFactor: number;
  /** p of exp(−t^0.91/p) */
  softening: number;
  /** b³/V, the cube of the Burgers vector over the volume of an atom */
  burgersCubePerVolume: number;
}

/** The strain rate at which thermal activation does not help at all. */
const REFERENCE_RATE = constant(1e4, '1/s');
const TEMPERATURE_EXPONENT = 0.91;

const shear = linear('shearModulus'); // GPa
/** (1 + ν)/(1 − ν), as a quotient of two sums over the elements */
const elastic = divide(
  linear(elementProduct(constant(9), column('bulkModulus'))),
  linear(
    elementSum(
      elementProduct(constant(3), column('bulkModulus')),
      elementProduct(constant(4), column('shearModulus')),
    ),
  ),
);
const meanVolume = linear(molarVolume); // cm³/mol

/**
 * Yield strength of a random solution from the volumes of its atoms, no constant fitted. Means by
 * mole fraction: μ shear and B bulk modulus (GPa), V molar volume (cm³/mol), ν Poisson's ratio of
 * μ and B, b the Burgers vector, ε = Σ cᵢ(Vᵢ − V)²/b⁶ per atom, q = (1 + ν)/(1 − ν):
 *   τ₀ = A_τ α^(−1/3) μ q^(4/3) ε^(2/3),
 *   ΔE = A_E α^(1/3) μ b³ q^(2/3) ε^(1/3),
 *   t = (kT/ΔE) ln(10⁴ s⁻¹/strain rate),
 *   σ = M τ₀ exp(−t^0.91/p);   0 where ε = 0.
 *
 * Stated so that nothing cancels and bounds are tight: q = 9B/(3B + 4μ), which is the same; ε is
 * the squared relative misfit over (b³/V)², so no length enters; ΔE is per mole, GPa cm³ being kJ.
 * The fall of the moduli with temperature is left out.
 * @source Varvenne, Luque & Curtin, Acta Mater. 118 (2016) 164; Maresca & Curtin, Acta Mater. 182
 *   (2020) 235 (equations from memory)
 */
export function soluteStrengthening(lattice: Lattice): {
  /** τ₀, GPa */
  zeroTemperatureStress: Expression;
  /** ΔE, kJ/mol */
  barrier: Expression;
  /** σ at the service temperature and strain rate, MPa */
  strength: Expression;
} {
  const { lineTension, stressFactor, barrierFactor, taylorFactor, softening, burgersCubePerVolume } = lattice;
  const misfit = divide(squaredVolumeMisfit, burgersCubePerVolume ** 2);
  const zeroTemperatureStress = times(
    stressFactor * lineTension ** (-1 / 3),
    times(shear, times(power(elastic, 4 / 3), power(misfit, 2 / 3))),
  );
  const barrier = times(
    barrierFactor * lineTension ** (1 / 3) * burgersCubePerVolume,
    times(times(shear, meanVolume), times(power(elastic, 2 / 3), power(misfit, 1 / 3))),
  );
  const heat = times(
    divide(constant(GAS_CONSTANT_J_PER_MOL_K, 'J/(mol K)'), constant(1000, 'J/kJ')),
    times(condition('serviceTemperature'), logarithm(divide(REFERENCE_RATE, condition('strainRate')))),
  ); // kJ/mol
  const activation = power(divide(heat, barrier), TEMPERATURE_EXPONENT);
  const softened = times(
    times(constant(1000 * taylorFactor, 'MPa/GPa'), zeroTemperatureStress),
    exponential(negate(divide(activation, softening))),
  );
  // At the reference rate and without misfit the barrier would be 0/0.
  const strength = choose(atMost(squaredVolumeMisfit, 0), constant(0, 'MPa'), softened);
  return { zeroTemperatureStress, barrier, strength };
}
