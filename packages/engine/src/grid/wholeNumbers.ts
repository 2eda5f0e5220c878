/**
 * A seeded source of whole numbers, each of 0 to `below` − 1 equally likely (below: 1 to 2^53).
 * The same seed gives the same numbers on any machine.
 *
 * 53 bits of xoshiro128**, seeded through splitmix32's mixing. Bits beyond the last whole multiple
 * of `below` are drawn again, so that no number is favoured; fewer than half of them are.
 * @source Blackman & Vigna, ACM Trans. Math. Softw. 47 (2021) 36 (xoshiro128**, from memory)
 */
export function wholeNumbers(seed: number): (below: number) => number {
  const bits = xoshiro(seed);
  return (below) => {
    const most = 2 ** 53 - (2 ** 53 % below);
    for (;;) {
      const drawn = (bits() >>> 5) * 2 ** 26 + (bits() >>> 6);
      if (drawn < most) return drawn % below;
    }
  };
}

function xoshiro(seed: number): () => number {
  const mix = splitmix(seed);
  let [a, b, c, d] = [mix(), mix(), mix(), mix()];
  return () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result >>> 0;
  };
}

function rotated(bits: number, by: number): number {
  return (bits << by) | (bits >>> (32 - by));
}

/** Both halves of the seed count: a whole number up to 2^53. */
function splitmix(seed: number): () => number {
  let state = (seed ^ Math.imul(Math.floor(seed / 2 ** 32), 0x85ebca6b)) | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return mixed ^ (mixed >>> 15);
  };
}
