import type { QuantityView } from '@tiegel/contract';
import { columns, priceColumn } from '@tiegel/elements';
import type { ElementView } from '../../server/types.ts';

/** A value that an element lacks, and the quantities that would need it. */
export interface Lack {
  /** name of the column, in a sentence */
  value: string;
  quantities: readonly string[];
}

const names = new Map<string, string>([...columns, priceColumn].map(({ id, name }) => [id, name]));

/**
 * For each element, the values that it lacks of those that the chosen quantities compute with.
 * A composition with such an element has no value of these quantities. Elements that lack
 * nothing are left out.
 */
export function lackingFor(
  chosen: readonly QuantityView[],
  elements: readonly ElementView[],
): ReadonlyMap<string, readonly Lack[]> {
  const needed = new Map<string, string[]>();
  for (const { name, needs } of chosen) {
    for (const column of needs.elements)
      needed.set(column, [...(needed.get(column) ?? []), name.toLowerCase()]);
  }
  const lacks = elements.map((element) => {
    const missing = [...needed].filter(([column]) => (element[column as keyof ElementView] ?? null) === null);
    return [
      element.symbol,
      missing.map(([column, quantities]) => ({
        value: names.get(column)?.toLowerCase() ?? column,
        quantities,
      })),
    ] as const;
  });
  return new Map(lacks.filter(([, missing]) => missing.length > 0));
}

/** 'lacks the price, which cost and cost per litre need'. */
export function lackInWords(lacks: readonly Lack[]): string {
  return lacks
    .map(({ value, quantities }) => {
      const named =
        quantities.length > 1
          ? `${quantities.slice(0, -1).join(', ')} and ${quantities.at(-1)}`
          : quantities[0];
      return `lacks the ${value}, which ${named} need${quantities.length > 1 ? '' : 's'}`;
    })
    .join('; ');
}
