import { setImmediate } from 'node:timers/promises';

/** So long nobody else is answered. */
export const turnMs = 10;

/** Goes through all steps of a work, with a turn for everybody else in between; what it gives in the end. */
export async function inTurns<Found>(steps: Generator<unknown, Found>): Promise<Found> {
  let since = performance.now();
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    if (performance.now() - since < turnMs) continue;
    await setImmediate();
    since = performance.now();
  }
}
