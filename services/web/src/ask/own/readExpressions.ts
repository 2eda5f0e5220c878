import type { QuantityView } from '@tiegel/contract';
import { type Fault, ProblemError } from '@tiegel/contract/terms';
import {
  columnsOf,
  conditionsOf,
  ownQuantity,
  parseExpression,
  type Quantity,
  quantities as registry,
} from '@tiegel/screening';

/** What a typed expression means, or why it means nothing. */
export interface ReadExpression {
  /** null while name or text are wrong */
  quantity: Quantity | null;
  /** the same as lists and fields show it; null with it */
  view: QuantityView | null;
  /** as printed; '' for a plain number; null where the text cannot be read */
  unit: string | null;
  textFaults: readonly Fault[];
  nameFaults: readonly Fault[];
}

/**
 * Reads expressions in the order in which they are written: each may name the registry's
 * quantities and those that stand before it. Nothing is computed. Loaded when there is one.
 */
export function readExpressions(rows: readonly { name: string; text: string }[]): ReadExpression[] {
  const known: Quantity[] = [...registry];
  return rows.map(({ name, text }) => {
    const parsed = attempt(() => parseExpression(text, known));
    if (!parsed.value) return { ...unread, textFaults: parsed.faults };
    const named = attempt(() => ownQuantity(name.trim(), text, known));
    const quantity = named.value;
    if (quantity) known.push(quantity);
    const view = quantity && viewOf(quantity);
    return { quantity, view, unit: parsed.value.unit, textFaults: [], nameFaults: named.faults };
  });
}

const unread: ReadExpression = { quantity: null, view: null, unit: null, textFaults: [], nameFaults: [] };

function viewOf(quantity: Quantity): QuantityView {
  const { formula: _, caution = null, ...rest } = quantity;
  const { elements, pairs } = columnsOf(quantity);
  return {
    ...rest,
    caution,
    needs: { elements: [...elements], pairs: [...pairs], conditions: conditionsOf(quantity) },
  };
}

function attempt<Value>(make: () => Value): { value: Value | null; faults: readonly Fault[] } {
  try {
    return { value: make(), faults: [] };
  } catch (error) {
    if (error instanceof ProblemError) return { value: null, faults: error.faults };
    throw error;
  }
}
