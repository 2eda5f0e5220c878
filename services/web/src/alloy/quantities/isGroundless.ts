import type { Explanation, QuantityView } from '@tiegel/contract';

/** Whether a quantity means nothing of an alloy, since that lies too far from all that it was learnt from; false while nobody knows. */
export function isGroundless({ basis }: QuantityView, explanation: Explanation | null): boolean {
  return basis?.quantity === 'nearestDistance' && explanation?.phase.basis === 'none';
}
