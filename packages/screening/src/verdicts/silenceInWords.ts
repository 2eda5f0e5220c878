import { criteria } from '../criteria/index.ts';
import type { Composition, QuantityValues } from '../values/valuesOf.ts';
import { isSpokenOf } from './verdictsOf.ts';

/** Why a criterion gives no verdict: it speaks of other alloys, or a value lacks. */
export function silenceInWords(
  id: string,
  composition: Composition,
  values: Readonly<QuantityValues>,
): string {
  const criterion = criteria.find((one) => one.id === id);
  if (!criterion) return '– no verdict';
  return isSpokenOf(criterion, composition, values) === false ? '– of other alloys' : '– a value lacks';
}
