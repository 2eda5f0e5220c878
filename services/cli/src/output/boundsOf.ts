import type { Limit } from '@tiegel/contract';

/** A limit by its id: 'density ≥ 6 and ≤ 8'. */
export function boundsOf({ quantity, min, max }: Limit): string {
  const bounds = [min === undefined ? '' : `≥ ${min}`, max === undefined ? '' : `≤ ${max}`];
  return `${quantity} ${bounds.filter(Boolean).join(' and ')}`;
}
