/** Bits of a key that are looked at in one pass: few enough for as many streams of writing as a core keeps apart. */
const digitBits = 11;
const digitCount = 2 ** digitBits;
/** Six passes of 11 bits hold 64. */
const passes = 6;
/** One to read the keys, one for each pass, one to write the order. */
const steps = passes + 2;

/**
 * The places of a column's values in their order, equal ones by place, those without a value (NaN)
 * last. In steps of some ten milliseconds for 10⁶ values, so that others can be answered in between,
 * told which share is done.
 *
 * A radix sort of the doubles' bits, turned so that they order as the numbers do: linear, and
 * stable without comparing places. Keys move with their places, so that memory is read in
 * sequence: looking keys up by place took ten times as long.
 */
export function* sortedPlaces(
  column: Float64Array,
  direction: 'asc' | 'desc',
): Generator<number, Uint32Array<ArrayBuffer>> {
  let from = valuedRows(column, direction === 'desc');
  const order = new Uint32Array(column.length);
  yield 1 / steps;
  let to = emptyRows(from.places.length);
  const digits = new Uint16Array(from.places.length);
  for (let pass = 0; pass < passes; pass += 1) {
    if (moveByDigit(from, to, pass * digitBits, digits)) [from, to] = [to, from];
    yield (pass + 2) / steps;
  }
  order.set(from.places);
  let end = from.places.length;
  for (const { low, high, places } of [from, to]) letGo(low, high, places);
  letGo(digits);
  for (let at = 0; at < column.length; at += 1) if (Number.isNaN(column[at])) order[end++] = at;
  return order;
}

/** Places with the two words of their keys. */
interface Rows {
  low: Uint32Array<ArrayBuffer>;
  high: Uint32Array<ArrayBuffer>;
  places: Uint32Array<ArrayBuffer>;
}

function emptyRows(count: number): Rows {
  return { low: new Uint32Array(count), high: new Uint32Array(count), places: new Uint32Array(count) };
}

/** Memory that was needed for a moment, 26 MB for 10⁶ values, goes at once: it may be long before somebody sweeps. */
function letGo(...arrays: readonly (Uint32Array<ArrayBuffer> | Uint16Array<ArrayBuffer>)[]): void {
  for (const { buffer } of arrays) buffer.transfer(0);
}

/** The places that have a value, with its bits turned such that a greater number, or a lesser one where it descends, has the greater ones. */
function valuedRows(column: Float64Array, descending: boolean): Rows {
  const { low, high, places } = emptyRows(column.length);
  const number = new Float64Array(1);
  const bits = new Uint32Array(number.buffer);
  let count = 0;
  for (let at = 0; at < column.length; at += 1) {
    if (Number.isNaN(column[at])) continue;
    // −0 + 0 is 0.
    number[0] = column[at]! + 0;
    const sign = bits[1]! >>> 31;
    const turned = (sign === 1) !== descending ? 0xffff_ffff : 0;
    low[count] = bits[0]! ^ turned;
    high[count] = bits[1]! ^ (sign === 1 ? turned : turned ^ 0x8000_0000);
    places[count] = at;
    count += 1;
  }
  return {
    low: low.subarray(0, count),
    high: high.subarray(0, count),
    places: places.subarray(0, count),
  };
}

/** Sorts rows by the digit from a bit on, which may lie in both words; false where all have the same, and nothing was moved. */
function moveByDigit(from: Rows, to: Rows, bit: number, digits: Uint16Array): boolean {
  const { low, high, places } = from;
  const count = places.length;
  readDigits(low, high, bit, digits);
  const ends = new Uint32Array(digitCount);
  for (let at = 0; at < count; at += 1) ends[digits[at]!]! += 1;
  let end = 0;
  for (let digit = 0; digit < digitCount; digit += 1) {
    if (ends[digit] === count) return false;
    end += ends[digit]!;
    ends[digit] = end - ends[digit]!;
  }
  for (let at = 0; at < count; at += 1) {
    const place = ends[digits[at]!]!++;
    to.low[place] = low[at]!;
    to.high[place] = high[at]!;
    to.places[place] = places[at]!;
  }
  return true;
}

function readDigits(low: Uint32Array, high: Uint32Array, bit: number, digits: Uint16Array): void {
  const mask = digitCount - 1;
  if (bit >= 32) {
    for (let at = 0; at < digits.length; at += 1) digits[at] = (high[at]! >>> (bit - 32)) & mask;
  } else if (bit + digitBits <= 32) {
    for (let at = 0; at < digits.length; at += 1) digits[at] = (low[at]! >>> bit) & mask;
  } else {
    for (let at = 0; at < digits.length; at += 1) {
      digits[at] = ((low[at]! >>> bit) | (high[at]! << (32 - bit))) & mask;
    }
  }
}
