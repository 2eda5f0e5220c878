/** Of two ways to do the same the one that was quicker so far; now and then the other one is tried. */
export interface QuickerWay<Way> {
  /** The way for the next piece of work. */
  next(): Way;
  /** Tells that a piece of work of some size is done the way that was given last. */
  done(size: number): void;
}

/** Pieces that go one way before the other is tried, at first and once both were. */
const firstTurns = 4;
const turnsBetween = 48;

/**
 * Learns by the clock which of two ways is the quicker one. Only time hangs on it: both have the
 * same outcome. What was measured long ago counts less, since the work changes and code gets compiled.
 */
export function quickerWay<Way>(one: Way, other: Way): QuickerWay<Way> {
  const ways = [one, other] as const;
  const spent = [0, 0];
  const sizes = [0, 0];
  let turn = 0;
  let chosen = 0;
  let start = 0;

  /** Which way is tried next; the better one by its time for so much work, except where the other has its turn. */
  function choose(): number {
    if (turn < 2 * firstTurns) return turn < firstTurns ? 0 : 1;
    const better = spent[0]! * sizes[1]! <= spent[1]! * sizes[0]! ? 0 : 1;
    return turn % turnsBetween === 0 ? 1 - better : better;
  }

  return {
    next() {
      chosen = choose();
      start = performance.now();
      return ways[chosen]!;
    },
    done(size) {
      turn += 1;
      spent[chosen]! += performance.now() - start;
      sizes[chosen]! += size;
      if (turn % turnsBetween !== 0) return;
      for (const way of [0, 1]) {
        spent[way]! /= 2;
        sizes[way]! /= 2;
      }
    },
  };
}
