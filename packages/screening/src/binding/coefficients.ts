/**
 * Numbers of one term, one for each element or pair of a pool, NaN where a value is missing.
 * Where all of them are short decimals, `whole` holds them times 10^places as integers: sums
 * over integer parts are then exact. Kept through sums and products, whose floating-point
 * results alone would no longer show it: (143.17 − 142.9)² is 0.0728999999999902.
 */
export interface Coefficients {
  values: Float64Array;
  decimal: { whole: Float64Array; places: number } | null;
}

const MOST_PLACES = 9;
const EXACT_BELOW = 2 ** 53;

/** The coefficients of plain data; decimal if nine places or fewer write all of them. */
export function coefficientsOf(values: Float64Array): Coefficients {
  for (let places = 0; places <= MOST_PLACES; places++) {
    const scale = 10 ** places;
    // A division of integers is rounded correctly, so equality means: this is that decimal.
    if (values.every((value) => Number.isNaN(value) || Math.round(value * scale) / scale === value)) {
      return decimalCoefficients(
        values.map((value) => Math.round(value * scale)),
        places,
      );
    }
  }
  return { values, decimal: null };
}

export function addCoefficients(left: Coefficients, right: Coefficients): Coefficients {
  return sum(left, right, 1);
}

export function subtractCoefficients(left: Coefficients, right: Coefficients): Coefficients {
  return sum(left, right, -1);
}

export function multiplyCoefficients(left: Coefficients, right: Coefficients): Coefficients {
  if (left.decimal && right.decimal) {
    const factors = right.decimal.whole;
    const product = decimalCoefficients(
      left.decimal.whole.map((whole, index) => whole * factors[index]!),
      left.decimal.places + right.decimal.places,
    );
    if (product.decimal) return product;
  }
  return mapCoefficients(left, (value, index) => value * right.values[index]!);
}

/** An operation that does not keep decimals. */
export function mapCoefficients(
  of: Coefficients,
  operation: (value: number, index: number) => number,
): Coefficients {
  return { values: of.values.map(operation), decimal: null };
}

function sum(left: Coefficients, right: Coefficients, sign: 1 | -1): Coefficients {
  if (left.decimal && right.decimal) {
    const places = Math.max(left.decimal.places, right.decimal.places);
    const leftScale = 10 ** (places - left.decimal.places);
    const rightScale = sign * 10 ** (places - right.decimal.places);
    const addends = right.decimal.whole;
    const whole = left.decimal.whole.map((one, index) => one * leftScale + addends[index]! * rightScale);
    const result = decimalCoefficients(whole, places);
    if (result.decimal) return result;
  }
  return mapCoefficients(left, (value, index) => value + sign * right.values[index]!);
}

/** Writes integers over a power of ten with as few places as will do; not decimal where they are too large to be exact. */
function decimalCoefficients(whole: Float64Array, places: number): Coefficients {
  let shortest = whole;
  let left = places;
  const known = (value: number) => !Number.isNaN(value);
  const exact = whole.every((value) => !known(value) || Math.abs(value) < EXACT_BELOW);
  while (exact && left > 0 && shortest.every((value) => !known(value) || value % 10 === 0)) {
    shortest = shortest.map((value) => value / 10);
    left--;
  }
  const values = shortest.map((value) => value / 10 ** left);
  return { values, decimal: exact && left <= MOST_PLACES ? { whole: shortest, places: left } : null };
}
