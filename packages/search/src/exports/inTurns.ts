import { setImmediate } from 'node:timers/promises';

/**
 * The same pieces, with a turn for all else in the process between two of them: a reader that takes
 * them at once would otherwise hold the thread until the last one.
 */
export async function* inTurns<Piece>(pieces: Iterable<Piece>): AsyncGenerator<Piece> {
  for (const piece of pieces) {
    yield piece;
    await setImmediate();
  }
}
