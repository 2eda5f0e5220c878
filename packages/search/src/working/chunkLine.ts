import type { Chunk } from '@tiegel/contract';
import type { Ledger } from '@tiegel/store';

/** How many chunks are read from the ledger at a time. */
const windowLength = 256;

/** The chunks of a search that wait to be handed out: first those that came back, then the ledger's in their order. */
export interface ChunkLine {
  /** Null when none waits. */
  next(): Chunk | null;
  giveBack(chunk: Chunk): void;
  /** Forgets a chunk that came back and then was finished all the same. */
  drop(ordinal: number): void;
}

export function chunkLine(ledger: Ledger, search: number): ChunkLine {
  const back = new Map<number, Chunk>();
  let window: Chunk[] = [];
  let last = -1;

  function fromLedger(): Chunk | null {
    if (window.length === 0) window = ledger.unfinished(search, last, windowLength);
    const chunk = window.shift() ?? null;
    last = chunk?.ordinal ?? last;
    return chunk;
  }

  return {
    next() {
      const [first] = back.values();
      if (first === undefined) return fromLedger();
      back.delete(first.ordinal);
      return first;
    },
    giveBack: (chunk) => void back.set(chunk.ordinal, chunk),
    drop: (ordinal) => void back.delete(ordinal),
  };
}
