import { problem } from '@tiegel/contract/terms';

/** Gives back a place; a second time does nothing. */
export type Leave = () => void;

/**
 * Places for what costs much of the one thread that answers everybody, and memory for as long as its
 * reader takes. Whoever finds none is refused and not kept waiting: a place is held as long as a reader
 * likes.
 *
 * @param most at once
 * @param what they are, in the plural
 * @returns takes a place; throws server/busy
 */
export function places(most: number, what: string): () => Leave {
  let taken = 0;
  return () => {
    if (taken >= most) throw problem('server/busy', { most, what });
    taken += 1;
    let left = false;
    return () => {
      if (!left) taken -= 1;
      left = true;
    };
  };
}
