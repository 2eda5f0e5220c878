import type { Code, Local } from '../emit.ts';
import { vectorsOfCounters } from '../layout.ts';

/** Counts of a kernel's points while it walks. */
export interface Counters {
  isEmpty: boolean;
  /** From where the last call left them, and back. */
  load(): void;
  store(): void;
  /** Counts the step at hand, by the mask of each counter and one for those behind: −1 or 0 in each lane. */
  count(masks: readonly Local[], others: Local): void;
  /** Takes back what the last step counted in some lanes. */
  uncount(lanes: Local): void;
}

/** Four counts a vector, each as two numbers of 16 bits, one a lane. A mask stays −1 or 0 when it is made narrow. */
export function countersIn(code: Code, address: number, count: number): Counters {
  const vectors = () => Array.from({ length: vectorsOfCounters(count) }, () => code.local('v128'));
  const counters = vectors();
  /** What the last step added to them. */
  const packed = vectors();

  function pushPacked([a, b, c, d]: readonly Local[]): void {
    code.get(a!).get(b!).op('i16x8.narrow_i32x4_s');
    code.get(c!).get(d!).op('i16x8.narrow_i32x4_s', 'i8x16.narrow_i16x8_s');
  }

  return {
    isEmpty: counters.length === 0,
    load() {
      for (const [at, counter] of counters.entries()) {
        code
          .i32(0)
          .access('v128.load', address + 16 * at)
          .set(counter);
      }
    },
    store() {
      for (const [at, counter] of counters.entries()) {
        code
          .i32(0)
          .get(counter)
          .access('v128.store', address + 16 * at);
      }
    },
    count(masks, others) {
      for (const [at, counter] of counters.entries()) {
        pushPacked([0, 1, 2, 3].map((place) => masks[4 * at + place] ?? others));
        code.set(packed[at]!);
        code.get(counter).get(packed[at]!).op('i16x8.sub').set(counter);
      }
    },
    uncount(lanes) {
      const taken = code.local('v128');
      pushPacked([lanes, lanes, lanes, lanes]);
      code.set(taken);
      for (const [at, counter] of counters.entries()) {
        code.get(counter).get(packed[at]!).get(taken).op('v128.and', 'i16x8.add').set(counter);
      }
    },
  };
}
