/** A unit as a multiple of a product of powers of kg, m, s, K, mol and the price list's currency. */
export interface Unit {
  /** How much of the base units one of it is: 1000 for kJ, 0.01 for %. */
  scale: number;
  /** Exponents of the base units, none of them 0. */
  exponents: Readonly<Record<string, number>>;
}

export const PLAIN_NUMBER: Unit = { scale: 1, exponents: {} };

/** Exponents and scales this near are the same: they come from a few multiplications. */
const NEAR = 1e-12;

export function multiplyUnits(left: Unit, right: Unit): Unit {
  const exponents: Record<string, number> = { ...left.exponents };
  for (const [base, exponent] of Object.entries(right.exponents)) {
    const sum = (exponents[base] ?? 0) + exponent;
    if (Math.abs(sum) < NEAR) delete exponents[base];
    else exponents[base] = sum;
  }
  return { scale: left.scale * right.scale, exponents };
}

export function raiseUnit({ scale, exponents }: Unit, exponent: number): Unit {
  if (exponent === 0) return PLAIN_NUMBER;
  return {
    scale: scale ** exponent,
    exponents: Object.fromEntries(Object.entries(exponents).map(([base, one]) => [base, one * exponent])),
  };
}

/** Whether numbers in the two units may be added as they stand: same dimension and same scale. */
export function sameUnit(left: Unit, right: Unit): boolean {
  const { scale, exponents } = multiplyUnits(left, raiseUnit(right, -1));
  return Math.abs(scale - 1) < NEAR && Object.keys(exponents).length === 0;
}

/** For messages: '1000 kg m^2 s^-2 mol^-1'. */
export function formatUnit({ scale, exponents }: Unit): string {
  const factors = Object.entries(exponents).map(([base, one]) => (one === 1 ? base : `${base}^${one}`));
  const parts = scale === 1 && factors.length > 0 ? factors : [String(scale), ...factors];
  return parts.join(' ');
}
