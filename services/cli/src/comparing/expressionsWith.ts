import { ProblemError } from '@tiegel/contract/terms';
import type { OwnColumn } from '@tiegel/elements';
import { ownQuantities, type Quantity } from '@tiegel/screening';

/** Of a search's own expressions those that can be worked out with these columns: it may have been asked with others. */
export function expressionsWith(
  columns: readonly OwnColumn[],
  lets: Readonly<Record<string, string>> = {},
): Quantity[] {
  let readable: Record<string, string> = {};
  for (const [name, text] of Object.entries(lets)) {
    const more = { ...readable, [name]: text };
    if (canBeRead(columns, more)) readable = more;
  }
  return ownQuantities({ columns, lets: readable }).slice(columns.length);
}

function canBeRead(columns: readonly OwnColumn[], lets: Readonly<Record<string, string>>): boolean {
  try {
    ownQuantities({ columns, lets });
    return true;
  } catch (error) {
    if (error instanceof ProblemError) return false;
    throw error;
  }
}
