import type { Outcome } from './outcome.ts';

const bytesPerNumber = Float64Array.BYTES_PER_ELEMENT;

/**
 * An outcome as bytes, for the way between processes: a length (32 bits), a head of that length in
 * JSON, spaces up to a multiple of 8 bytes, then `best` and `bestOfSystems` as 64-bit floats in the
 * byte order of the machine, which is little-endian on every one that Node runs on. Exact: also
 * NaN, which JSON has not.
 */
export function encodeOutcome(outcome: Outcome): Uint8Array<ArrayBuffer> {
  const { best, bestOfSystems, ...counts } = outcome;
  const head = new TextEncoder().encode(
    JSON.stringify({ ...counts, lengths: [best.length, bestOfSystems.length] }),
  );
  const start = numbersStart(head.length);
  const bytes = new Uint8Array(start + (best.length + bestOfSystems.length) * bytesPerNumber).fill(
    0x20,
    0,
    start,
  );
  new DataView(bytes.buffer).setUint32(0, head.length, true);
  bytes.set(head, 4);
  const numbers = new Float64Array(bytes.buffer, start);
  numbers.set(best);
  numbers.set(bestOfSystems, best.length);
  return bytes;
}

/** The outcome that `encodeOutcome` made the bytes of. Throws a RangeError or SyntaxError for anything else. */
export function decodeOutcome(bytes: Uint8Array): Outcome {
  const headLength = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  const { lengths, ...counts } = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + headLength)));
  const start = numbersStart(headLength);
  if (bytes.length !== start + (lengths[0] + lengths[1]) * bytesPerNumber) {
    throw new RangeError(`An outcome was cut short: ${bytes.length} bytes.`);
  }
  // A copy: what comes from a socket lies at any address, and 64-bit floats only at multiples of 8.
  const numbers = new Float64Array(new Uint8Array(bytes.subarray(start)).buffer);
  return { ...counts, best: numbers.slice(0, lengths[0]), bestOfSystems: numbers.slice(lengths[0]) };
}

const numbersStart = (headLength: number): number =>
  Math.ceil((4 + headLength) / bytesPerNumber) * bytesPerNumber;
