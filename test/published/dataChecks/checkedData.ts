import { type ElementRecord, elementRecords, type PairRecord, pairRecords } from '@tiegel/elements';

/** What a data check looks at: plain copies, so that a test may spoil them and see the check object. */
export interface CheckedData {
  elements: ElementRecord[];
  pairs: PairRecord[];
}

/** A check of the data: what it objects to, in words; nothing where all is well. */
export type DataCheck = (data: CheckedData) => string[];

export function copyOfData(): CheckedData {
  return structuredClone({ elements: elementRecords(null), pairs: pairRecords() });
}

export type NumberColumn = Exclude<
  {
    [K in keyof ElementRecord]: ElementRecord[K] extends string | number | null ? K : never;
  }[keyof ElementRecord],
  'symbol' | 'name' | 'family' | 'price'
>;

/** A number of an element that the check cannot do without; missing ones are NaN, which no check passes. */
export function numberOf(element: ElementRecord, column: NumberColumn): number {
  const value = element[column];
  return typeof value === 'number' ? value : Number.NaN;
}

/** A number of the data beside what another source or relation makes of it; NaN where there is none. */
export interface Compared {
  symbol: string;
  found: number;
  expected: number;
}

/**
 * What differs by more than the tolerance (a fraction of the expected), in words, but for those
 * excused by name with the reason. An excuse that nothing needs any more is objected to as well.
 */
export function disagreements(
  what: string,
  tolerance: number,
  rows: readonly Compared[],
  excused: Readonly<Record<string, string>> = {},
): string[] {
  return rows.flatMap(({ symbol, found, expected }) => {
    const agrees = Math.abs(found / expected - 1) <= tolerance;
    if (agrees !== Object.hasOwn(excused, symbol)) return [];
    return agrees
      ? [`${symbol}: ${what} agrees and needs no excuse`]
      : [`${symbol}: ${what} is ${found}, expected ${expected}`];
  });
}
