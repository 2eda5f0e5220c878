/** One in so many reported classes may be outside the set: 80 % are inside. Whole, for (1 − 0.8) × 10 is a little less than 2. */
const OUTSIDE = 5;

/**
 * The smallest probability that a class needs to be in the set of likely classes, so that the
 * reported class is in it for 80 % of alloys like those given.
 * @param said the probability that each alloy's reported class was given
 * @source Vovk, Gammerman & Shafer, Algorithmic Learning in a Random World (2005), split conformal sets (from memory)
 */
export function conformalThreshold(said: readonly number[]): number {
  const sorted = said.toSorted((a, b) => a - b);
  const rank = Math.floor((sorted.length + 1) / OUTSIDE);
  return rank === 0 ? 0 : sorted[rank - 1]!;
}

/** Coverage and mean size of such sets, each fold's threshold taken from the other folds. */
export function conformalCoverage(
  probabilities: readonly (readonly number[])[],
  classes: readonly number[],
  folds: readonly number[],
): { coverage: number; size: number } {
  let covered = 0;
  let size = 0;
  for (const fold of new Set(folds)) {
    const threshold = conformalThreshold(
      classes.flatMap((one, at) => (folds[at] === fold ? [] : [probabilities[at]![one]!])),
    );
    classes.forEach((one, at) => {
      if (folds[at] !== fold) return;
      if (probabilities[at]![one]! >= threshold) covered++;
      size += probabilities[at]!.filter((p) => p >= threshold).length;
    });
  }
  return { coverage: covered / classes.length, size: size / classes.length };
}
