import { inTurns } from '../inTurns.ts';

/**
 * What follows from alloys, worked out anew only when they changed, and in turns: each look at the evidence and each
 * alloy that is read asks for it, and of three thousand it takes seconds. Who asks for the same meanwhile waits for the same.
 */
export function keptFor<Alloys, Found>(
  steps: (alloys: Alloys) => Generator<unknown, Found>,
): (alloys: Alloys) => Promise<Found> {
  let kept: { key: string; found: Promise<Found> } | null = null;
  return (alloys) => {
    const key = JSON.stringify(alloys);
    if (kept?.key === key) return kept.found;
    const mine = { key, found: inTurns(steps(alloys)) };
    kept = mine;
    // What failed is tried again, and its reason told to all who waited.
    mine.found.catch(() => {
      if (kept === mine) kept = null;
    });
    return mine.found;
  };
}
