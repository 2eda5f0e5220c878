import type { PreparedLimit } from '../prepared/prepare.ts';

/** Counts over many points, and which of the points pass. */
export interface LimitTests {
  passedEach: number[];
  /** For each limited quantity, points without a value. */
  withoutValue: number[];
  /** Tests the first `count` places; says how many pass every limit and lists them in `passing`. */
  test(count: number): number;
  passing: Int32Array;
}

/**
 * Tests limits over arrays of up to `capacity` values.
 *
 * @param limited the values of each limited quantity
 * @param mayLack whether a limited quantity may be without a value (not finite) anywhere
 */
export function limitTests(
  limits: readonly PreparedLimit[],
  limited: readonly Float64Array[],
  mayLack: readonly boolean[],
  capacity: number,
): LimitTests {
  /** 1 where a limit is not met. */
  const fails = new Uint8Array(capacity);
  const passing = new Int32Array(capacity);
  const passedEach = limits.map(() => 0);
  const withoutValue = limited.map(() => 0);
  const ranges = limits.map(({ least, greatest }) => Float64Array.of(least, greatest));
  return {
    passedEach,
    withoutValue,
    passing,
    test(count) {
      fails.fill(0, 0, count);
      for (const [index, { output }] of limits.entries()) {
        passedEach[index]! += countWithin(limited[output]!, ranges[index]!, fails, count);
      }
      for (const [output, values] of limited.entries()) {
        if (mayLack[output]) withoutValue[output]! += countMissing(values, count);
      }
      return collect(fails, passing, count);
    },
  };
}

/** Counts the values within a range, ends included, and marks the places of the others. */
function countWithin(values: Float64Array, range: Float64Array, fails: Uint8Array, count: number): number {
  const least = range[0]!;
  const greatest = range[1]!;
  let passed = 0;
  for (let at = 0; at < count; at += 1) {
    if (values[at]! >= least && values[at]! <= greatest) passed += 1;
    else fails[at] = 1;
  }
  return passed;
}

/** Counts the values that are not finite. */
function countMissing(values: Float64Array, count: number): number {
  let missing = 0;
  for (let at = 0; at < count; at += 1) if (values[at]! - values[at]! !== 0) missing += 1;
  return missing;
}

/** Lists the places that are not marked. */
function collect(fails: Uint8Array, passing: Int32Array, count: number): number {
  let passed = 0;
  for (let at = 0; at < count; at += 1) {
    passing[passed] = at;
    passed += 1 - fails[at]!;
  }
  return passed;
}
