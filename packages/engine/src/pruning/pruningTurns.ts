/** Decides from chunk to chunk whether regions are left out, or the kernel goes through every point. */
export interface PruningTurns {
  /** How long leaving regions out may take for the next chunk, ms; 0 where the kernel takes it without asking. */
  mostMs(kernelMs: number): number;
  /** Tells that it was done within that time. */
  took(ms: number, kernelMs: number): void;
  /** Tells that it was not. */
  gaveUp(): void;
}

/** The first time, however soon the kernel would be done: what was never run says more of the compiler. */
const firstMs = 60;
/** After giving up the kernel takes one chunk, then twice as many each time, but no more than these: a busy minute, or a region unlike the others, is not to decide the whole search. */
const longestRest = 32;
/** What was quicker so far may take so much longer than the kernel before it has to show itself anew. */
const patience = 1.25;

/**
 * Learns by the clock which way is the quicker one for a search's chunks. Only time hangs on it: both have the
 * same outcome.
 */
export function pruningTurns(): PruningTurns {
  let isFirst = true;
  let isQuicker = false;
  let rest = 0;
  let restLeft = 0;
  return {
    mostMs(kernelMs) {
      if (restLeft > 0) {
        restLeft -= 1;
        return 0;
      }
      const most = isFirst ? Math.max(kernelMs, firstMs) : kernelMs;
      isFirst = false;
      return isQuicker ? Number.POSITIVE_INFINITY : most;
    },
    took(ms, kernelMs) {
      isQuicker = ms <= (isQuicker ? patience : 1) * kernelMs;
      if (isQuicker) rest = 0;
    },
    gaveUp() {
      isQuicker = false;
      rest = Math.min(longestRest, Math.max(1, 2 * rest));
      restLeft = rest;
    },
  };
}
