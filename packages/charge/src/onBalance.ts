/** Decimals that a number is written with: 3 for 0.001, 0 for 5, 7 for 1e-7. */
export function decimalsOf(number: number): number {
  const [digits = '', exponent = '0'] = String(number).split('e');
  const after = digits.split('.')[1]?.length ?? 0;
  return Math.min(100, Math.max(0, after - Number(exponent)));
}

/** Steps of a balance as a mass (g), without the last digits that multiplying leaves (3 × 0.1). */
export function massOf(steps: number, resolution: number): number {
  return Number((steps * resolution).toFixed(decimalsOf(resolution)));
}

/** The number of steps of the balance nearest to a mass. */
export function stepsOf(mass: number, resolution: number): number {
  return Math.round(mass / resolution);
}
