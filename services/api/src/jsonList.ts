import { Readable } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import { turnMs } from './inTurns.ts';

/**
 * A list as JSON, worked out one by one while it is read: others have their turn in between, no more
 * of it is held than one turn makes, and when the reader goes nothing more is worked out.
 *
 * @param items each of them a text of JSON
 */
export function jsonList(items: Iterable<string>): Readable {
  return Readable.from(pieces(items), { objectMode: false });
}

async function* pieces(items: Iterable<string>): AsyncGenerator<string> {
  let piece = '[';
  let first = true;
  let since = performance.now();
  for (const item of items) {
    piece += first ? item : `,${item}`;
    first = false;
    if (performance.now() - since < turnMs) continue;
    yield piece;
    piece = '';
    await setImmediate();
    since = performance.now();
  }
  yield `${piece}]`;
}
