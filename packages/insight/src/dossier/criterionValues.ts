import type { Facts } from '@tiegel/contract';
import type { Composition, QuantityValues } from '@tiegel/screening';
import { kappaMargin } from '../compounds/kappaMargin.ts';
import { kingPhi } from '../compounds/kingPhi.ts';

/** The late quantities that published rules are about. */
export function criterionValues(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>>,
): QuantityValues {
  return {
    kingPhi: kingPhi(composition, facts),
    kappaMargin: kappaMargin(composition, facts, conditions),
  };
}
