const view = new DataView(new ArrayBuffer(8));
const signBit = 1n << 63n;

/**
 * The place of a double among all doubles in their order: neighbours are 1 apart. For doubles of
 * one sign the bits say it; those below 0 are counted downwards, and −0 stands with 0.
 */
export function placeOf(value: number): bigint {
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  return bits >= signBit ? signBit - bits : bits;
}

/** The double at a place. */
export function doubleAt(place: bigint): number {
  view.setBigUint64(0, place < 0n ? signBit - place : place);
  return view.getFloat64(0);
}
