/**
 * Learns whether it pays to ask, of systems that a kernel can go through whole, if limits leave them open. Only
 * time hangs on it: the outcome is the same.
 */
export interface OpenQuestion {
  /** Whether to ask for a system of so many points. */
  isDue(points: number): boolean;
  /** Tells what came of asking: whether the system was spared. */
  answered(isSpared: boolean): void;
}

/** A kernel goes through so many points while an answer is found, and through so many while it is turned to a system. */
const pointsOfAnswer = 2000;
const pointsOfTurning = 1000;
/** Where it does not pay it is still asked once in so many systems. */
const turnsBetween = 16;
/** After so many answers each counts half: later systems are unlike the first. */
const answersKept = 64;

export function openQuestion(): OpenQuestion {
  let turn = -1;
  let asked = 0;
  let spared = 0;
  return {
    isDue(points) {
      turn += 1;
      return turn % turnsBetween === 0 || spared * (points + pointsOfTurning) > asked * pointsOfAnswer;
    },
    answered(isSpared) {
      asked += 1;
      if (isSpared) spared += 1;
      if (asked < answersKept) return;
      asked >>= 1;
      spared >>= 1;
    },
  };
}
