import { z } from 'zod';
import { problem } from '../problem/problem.ts';
import { numbersPerRankedPoint, type Outcome } from './outcome.ts';

const bytesPerNumber = Float64Array.BYTES_PER_ELEMENT;
const formatVersion = 1;

const count = z.int().nonnegative();
const headSchema = z.strictObject({
  version: z.literal(formatVersion),
  points: count,
  passed: count.nullable(),
  passedEach: z.array(count).nullable(),
  outside: z.record(z.string(), count).nullable(),
  /** How many numbers `best` and `bestOfSystems` have. */
  lengths: z.tuple([count.multipleOf(numbersPerRankedPoint), count.multipleOf(numbersPerRankedPoint)]),
  /** The same of the members of the front and of its cut (0: none), where there is a front. */
  frontLengths: z.tuple([count, count]).exactOptional(),
});

/**
 * An outcome as bytes, for the way between processes and for storing: a length (32 bits), a head
 * of that length in JSON, spaces up to a multiple of 8 bytes, then `best`, `bestOfSystems` and
 * the front as 64-bit floats in the byte order of the machine, which is little-endian on every one that Node
 * runs on. Exact: also NaN, which JSON has not.
 */
export function encodeOutcome(outcome: Outcome): Uint8Array<ArrayBuffer> {
  const { best, bestOfSystems, front, ...counts } = outcome;
  const cut = front?.cut ?? new Float64Array();
  const lists = [best, bestOfSystems, ...(front ? [front.members, cut] : [])];
  const lengths = [best.length, bestOfSystems.length];
  const frontLengths = front && [front.members.length, cut.length];
  const head = new TextEncoder().encode(
    JSON.stringify({ version: formatVersion, ...counts, lengths, frontLengths }),
  );
  const start = numbersStart(head.length);
  const length = lists.reduce((sum, list) => sum + list.length, 0);
  const bytes = new Uint8Array(start + length * bytesPerNumber).fill(0x20, 0, start);
  new DataView(bytes.buffer).setUint32(0, head.length, true);
  bytes.set(head, 4);
  const numbers = new Float64Array(bytes.buffer, start);
  let at = 0;
  for (const list of lists) {
    numbers.set(list, at);
    at += list.length;
  }
  return bytes;
}

/**
 * The outcome that `encodeOutcome` made the bytes of.
 * @throws ProblemError outcome/unreadable for anything else, also for another version of the format
 */
export function decodeOutcome(bytes: Uint8Array): Outcome {
  const { head, start } = readHead(bytes);
  const { version: _, lengths, frontLengths, ...counts } = head;
  const all = [...lengths, ...(frontLengths ?? [])];
  if (bytes.length !== start + all.reduce((sum, length) => sum + length, 0) * bytesPerNumber) {
    throw unreadable(`${bytes.length} bytes are not what its head says`);
  }
  // A copy: what comes from a socket lies at any address, and 64-bit floats only at multiples of 8.
  const numbers = new Float64Array(new Uint8Array(bytes.subarray(start)).buffer);
  let end = 0;
  const [best, bestOfSystems, members, cut] = all.map((length) => {
    end += length;
    return numbers.subarray(end - length, end);
  }) as [Float64Array, Float64Array, Float64Array?, Float64Array?];
  const front = members && { front: { members, cut: cut?.length ? cut : null } };
  return { ...counts, best, bestOfSystems, ...front };
}

function readHead(bytes: Uint8Array): { head: z.infer<typeof headSchema>; start: number } {
  if (bytes.length < 4) throw unreadable('it has no head');
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  const text = new TextDecoder().decode(bytes.subarray(4, 4 + length));
  const head = headSchema.safeParse(parsed(text));
  if (!head.success) throw unreadable(`its head is not one of version ${formatVersion}`);
  return { head: head.data, start: numbersStart(length) };
}

/** What JSON says; undefined where it is none. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const unreadable = (found: string) => problem('outcome/unreadable', { found });

const numbersStart = (headLength: number): number =>
  Math.ceil((4 + headLength) / bytesPerNumber) * bytesPerNumber;
