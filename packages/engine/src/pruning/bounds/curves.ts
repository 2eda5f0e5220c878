/** A function of one variable that bends one way over a stretch. */
export interface Curve {
  /** Its ends over a stretch of its domain, and the least and greatest argument that have a value. */
  from: number;
  value(at: number): number;
  slope(at: number): number;
  /** 1 where it lies above its tangents over the stretch, −1 below, 0 neither. */
  bends(low: number, high: number): 1 | -1 | 0;
  /** Where it turns round, if it does. */
  turns: number | null;
  /** Whether the values at the ends are correctly rounded, hence monotone as computed. */
  exact: boolean;
}

export const square: Curve = {
  ...{ from: -Infinity, turns: 0, exact: true },
  value: (at) => at * at,
  slope: (at) => 2 * at,
  bends: () => 1,
};
export const root: Curve = {
  ...{ from: 0, turns: null, exact: true },
  value: Math.sqrt,
  slope: (at) => 0.5 / Math.sqrt(at),
  bends: () => -1,
};
export const exponential: Curve = {
  ...{ from: -Infinity, turns: null, exact: false },
  value: Math.exp,
  slope: Math.exp,
  bends: () => 1,
};
export const logarithm: Curve = {
  ...{ from: 0, turns: null, exact: false },
  value: Math.log,
  slope: (at) => 1 / at,
  bends: () => -1,
};
export const size: Curve = {
  ...{ from: -Infinity, turns: 0, exact: true },
  value: Math.abs,
  slope: Math.sign,
  bends: () => 1,
};

export function powerOf(exponent: number): Curve {
  const whole = Number.isInteger(exponent);
  const even = whole && exponent % 2 === 0;
  return {
    from: whole ? -Infinity : 0,
    turns: even ? 0 : null,
    exact: false,
    value: (at) => (at + 0) ** exponent,
    slope: (at) => exponent * (at + 0) ** (exponent - 1),
    bends(low, high) {
      if (exponent === 0 || exponent === 1) return 0;
      if (low >= 0) return exponent > 1 || exponent < 0 ? 1 : -1;
      if (even && exponent > 0) return 1;
      if (high <= 0 && whole) return even ? 1 : -1;
      return 0;
    },
  };
}
