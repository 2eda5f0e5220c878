import type { MiedemaParameters } from './miedemaParameters.ts';

/** P of Miedema's model, kJ/(V² cm² (density units)^(1/3)) as the other units here demand. */
const P = { bothTransition: 14.2, neitherTransition: 10.7, oneTransition: 12.35 };
/** Q/P, V² per (density units)^(2/3) */
const Q_OVER_P = 9.4;
/** How much of the hybridisation term is left in the liquid. */
const LIQUID_HYBRIDISATION = 0.73;
/** Unlike neighbours in an ordered compound: f = c_s (1 + 8 (c_s c_s')²). */
const ORDER = 8;
/** Volumes after two steps: 95 % of compounds lie within 0.02 kJ/mol of where further steps would lead, the worst, carbides of lithium, within 1.6. */
const STEPS = 2;

export type MiedemaState = 'liquid' | 'compound';

/**
 * Enthalpy of forming a mole of atoms of a binary alloy from the elements by Miedema's model, kJ/mol.
 *
 * ΔH = x_A f_AB ΔH(A in B), with
 *   ΔH(A in B) = 2P V_A / (1/n_A + 1/n_B) · (−(Δφ)² + 9.4 (Δn)² − R/P),
 * V the surface V^(2/3) in the alloy, n the cube root of the electron density; R/P = R_A R_B
 * between a transition and another element (times 0.73 in the liquid), else 0. With surface
 * fractions c_s from x V, f_AB = c_s(B) in the liquid and c_s(B) (1 + 8 (c_s(A) c_s(B))²) in an
 * ordered compound. The volumes follow the transfer of charge, V_A = V_A⁰ (1 + a_A f_AB (φ_A − φ_B)),
 * found by iteration. A compound also costs Σ x H_trans, the energy that turns an element that is no
 * metal into one; the liquid's reference is the element turned already, as in tables of mixing
 * enthalpies.
 *
 * @param share mole fraction of the first element, between 0 and 1
 * @param steps of the iteration, from the volumes of the pure elements
 * @source de Boer, Boom, Mattens, Miedema & Niessen, Cohesion in Metals (1988); from memory
 */
export function formationEnthalpy(
  first: MiedemaParameters,
  second: MiedemaParameters,
  share: number,
  state: MiedemaState,
  steps = STEPS,
): number {
  const order = state === 'compound' ? ORDER : 0;
  const { surface, contact } = alloyed(first, second, share, order, steps);
  const perSurface =
    (2 * pOf(first, second) * driving(first, second, state)) /
    (1 / first.electronDensity + 1 / second.electronDensity);
  const metals =
    state === 'compound' ? share * first.transformation + (1 - share) * second.transformation : 0;
  return share * contact * surface * perSurface + metals;
}

function pOf(first: MiedemaParameters, second: MiedemaParameters): number {
  if (first.isTransition !== second.isTransition) return P.oneTransition;
  return first.isTransition ? P.bothTransition : P.neitherTransition;
}

/** −(Δφ)² + (Q/P)(Δn)² − R/P, V² */
function driving(first: MiedemaParameters, second: MiedemaParameters, state: MiedemaState): number {
  const hybridised = first.isTransition !== second.isTransition;
  const full = hybridised ? first.hybridisation * second.hybridisation : 0;
  return (
    -((first.potential - second.potential) ** 2) +
    Q_OVER_P * (first.electronDensity - second.electronDensity) ** 2 -
    full * (state === 'liquid' ? LIQUID_HYBRIDISATION : 1)
  );
}

/** The first element's surface (cm2) in the alloy and the share of it that touches the second. */
function alloyed(
  first: MiedemaParameters,
  second: MiedemaParameters,
  share: number,
  order: number,
  steps: number,
): { surface: number; contact: number } {
  const transfer = first.potential - second.potential;
  let [ofFirst, ofSecond] = [first.surface, second.surface];
  for (let step = 0; ; step++) {
    const fraction = (share * ofFirst) / (share * ofFirst + (1 - share) * ofSecond);
    const enhanced = 1 + order * (fraction * (1 - fraction)) ** 2;
    const contact = (1 - fraction) * enhanced;
    if (step === steps) return { surface: ofFirst, contact };
    ofFirst = first.surface * (1 + first.volume * contact * transfer);
    ofSecond = second.surface * (1 - second.volume * fraction * enhanced * transfer);
  }
}
