import type { ReferenceElement } from './referenceData.ts';

/** A system as the formulas see it: its elements, and the pair enthalpies H_ij (kJ/mol) as a matrix. */
export interface PlainSystem {
  elements: ReferenceElement[];
  enthalpy: number[][];
  /** K; the defaults are those of the docs of the specification */
  annealTemperature?: number;
  serviceTemperature?: number;
}

/** A quantity of a composition: mole fractions c in the order of the system's elements; null where it has no value. */
export type Formula = (c: readonly number[], system: PlainSystem) => number | null;

const GAS_CONSTANT = 8.314462618; // J/(mol K)

/** Σ cᵢ xᵢ, null where an element that is present lacks x. */
function mean(
  c: readonly number[],
  { elements }: PlainSystem,
  of: (element: ReferenceElement) => number | null,
): number | null {
  let sum = 0;
  for (let i = 0; i < c.length; i++) {
    const value = of(elements[i]!);
    if (value === null) return null;
    sum += c[i]! * value;
  }
  return sum;
}

/** Σ cᵢ (xᵢ − x̄)², about the mean. */
function variance(
  c: readonly number[],
  system: PlainSystem,
  of: (element: ReferenceElement) => number | null,
): number | null {
  const average = mean(c, system, of);
  if (average === null) return null;
  let sum = 0;
  for (let i = 0; i < c.length; i++) sum += c[i]! * (of(system.elements[i]!)! - average) ** 2;
  return sum;
}

const entropy = (c: readonly number[]): number => {
  let sum = 0;
  for (const share of c) sum += share * Math.log(share);
  return c.length === 1 ? 0 : -GAS_CONSTANT * sum;
};

const mixingEnthalpy: Formula = (c, { enthalpy }) => {
  let sum = 0;
  for (let i = 0; i < c.length; i++) {
    for (let j = i + 1; j < c.length; j++) sum += 4 * enthalpy[i]![j]! * c[i]! * c[j]!;
  }
  return sum;
};

const relativeSpread = (of: (element: ReferenceElement) => number | null): Formula => {
  return (c, system) => {
    const spread = variance(c, system, of);
    return spread === null ? null : (100 * Math.sqrt(spread)) / mean(c, system, of)!;
  };
};

const sizeMismatch = relativeSpread(({ radius }) => radius);

const density: Formula = (c, system) => {
  return mean(c, system, ({ mass }) => mass)! / mean(c, system, ({ mass, density }) => mass / density)!;
};

const cost: Formula = (c, system) => {
  const priced = mean(c, system, ({ mass, price }) => (price === null ? null : mass * price));
  return priced === null ? null : priced / mean(c, system, ({ mass }) => mass)!;
};

/**
 * Quantities written down once more, as plainly as their formulas are published
 * (Σ over mole fractions, variance about the mean), to have something to compare with.
 */
export const formulas: Record<string, Formula> = {
  configurationalEntropy: entropy,
  mixingEnthalpy,
  sizeMismatch,
  meltingTemperature: (c, system) => mean(c, system, ({ melting }) => melting),
  omega: (c, system) => {
    if (c.length === 1) return null;
    const melting = mean(c, system, (element) => element.melting);
    if (melting === null) return null;
    const joule = Math.abs(1000 * mixingEnthalpy(c, system)!);
    return joule === 0 ? 1000 : Math.min(1000, (melting * entropy(c)) / joule);
  },
  valenceElectronConcentration: (c, system) => mean(c, system, ({ valence }) => valence),
  electronegativitySpread: (c, system) => Math.sqrt(variance(c, system, ({ pauling }) => pauling)!),
  allenElectronegativitySpread: relativeSpread(({ allen }) => allen),
  lambda: (c, system) => {
    const mismatch = sizeMismatch(c, system)!;
    return mismatch === 0 ? 10_000 : Math.min(10_000, entropy(c) / mismatch ** 2);
  },
  density,
  cost,
  costPerLitre: (c, system) => {
    const perKilogram = cost(c, system);
    return perKilogram === null ? null : perKilogram * density(c, system)!;
  },
  meanAtomicMass: (c, system) => mean(c, system, ({ mass }) => mass),
  mixingFreeEnergy: (c, system) => {
    const { annealTemperature = 1273.15 } = system;
    return mixingEnthalpy(c, system)! - (annealTemperature * entropy(c)) / 1000;
  },
  homologousTemperature: (c, system) => {
    const { serviceTemperature = 293.15 } = system;
    const melting = mean(c, system, (element) => element.melting);
    return melting === null ? null : serviceTemperature / melting;
  },
};
