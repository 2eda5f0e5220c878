import Piscina, { move } from 'piscina';

/**
 * An answer of a scoring thread whose lists of numbers go over without being copied: they are gone
 * from the thread then. Short ones are copied all the same.
 *
 * @param lists those that nobody else in the thread holds
 */
export function handOver<Answer extends object>(answer: Answer, lists: readonly Float64Array[]): Answer {
  const buffers = lists
    .filter(({ byteLength, buffer }) => byteLength >= leastBytes && byteLength === buffer.byteLength)
    .map(({ buffer }) => buffer);
  Object.defineProperties(answer, {
    [Piscina.transferableSymbol]: { value: buffers },
    [Piscina.valueSymbol]: { value: answer },
  });
  return move(answer as never) as unknown as Answer;
}

const leastBytes = 64 * 1024;
