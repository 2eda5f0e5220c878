import { ProblemError } from '@tiegel/contract/terms';
import type { PairRecord } from '@tiegel/elements';
import { parseAlloy } from '@tiegel/elements';
import { type Quantity, valuesOf } from '@tiegel/screening';
import { factsOf } from '../../alloy/state/factsOf.ts';
import type { ElementView } from '../../server/types.ts';

/** The value of an expression, null where it has none; or why the typed text is no alloy. */
export type TriedValue = { value: number | null } | { fault: string };

/** The value of an expression for an alloy as somebody types it. */
export function valueOfOwn(
  quantity: Quantity,
  alloy: string,
  elements: readonly ElementView[],
  pairs: readonly PairRecord[],
  conditions: Readonly<Record<string, number>>,
): TriedValue {
  try {
    const composition = parseAlloy(alloy);
    const facts = factsOf(Object.keys(composition), elements, pairs);
    return { value: valuesOf(composition, facts, [quantity], conditions)[quantity.id]! };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return { fault: error.faults.map(({ detail, remedy }) => `${detail} ${remedy}`).join(' ') };
  }
}
