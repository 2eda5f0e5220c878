import { seededRandom } from '../seededRandom.ts';

/**
 * Divides rows into folds so that a group (an element system) is never in two of them, and every
 * fold has a like share of each class: groups go, the largest first, to the fold that they leave
 * most even. Two alloys of one system are neighbours: a split between them would leak.
 *
 * @returns the fold of each row, 0 to folds − 1
 */
export function groupedFolds(
  groups: readonly string[],
  classes: readonly number[],
  { folds, seed }: { folds: number; seed: number },
): number[] {
  const random = seededRandom(seed);
  const classCount = Math.max(...classes) + 1;
  const totals = countsOf(classes, classCount);
  const members = Map.groupBy(groups.keys(), (row) => groups[row]!);
  const order = [...members.values()]
    .map((rows) => ({ rows, draw: random() }))
    .sort((a, b) => b.rows.length - a.rows.length || a.draw - b.draw);
  const filled = Array.from({ length: folds }, () => new Array<number>(classCount).fill(0));
  const foldOf = new Array<number>(groups.length).fill(0);
  for (const { rows } of order) {
    const added = countsOf(
      rows.map((row) => classes[row]!),
      classCount,
    );
    const best = filled
      .map((_, fold) => ({ fold, unevenness: unevenness(filled, fold, added, totals), draw: random() }))
      .reduce((a, b) =>
        b.unevenness < a.unevenness || (b.unevenness === a.unevenness && b.draw < a.draw) ? b : a,
      );
    for (const row of rows) foldOf[row] = best.fold;
    added.forEach((count, k) => {
      filled[best.fold]![k]! += count;
    });
  }
  return foldOf;
}

function countsOf(classes: readonly number[], classCount: number): number[] {
  const counts = new Array<number>(classCount).fill(0);
  for (const one of classes) counts[one]! += 1;
  return counts;
}

/** How unequal the folds' shares of the classes would be: mean over the classes of the variance. */
function unevenness(filled: readonly number[][], fold: number, added: number[], totals: number[]): number {
  return totals.reduce((sum, total, k) => {
    if (total === 0) return sum;
    const shares = filled.map((counts, at) => (counts[k]! + (at === fold ? added[k]! : 0)) / total);
    const mean = shares.reduce((a, b) => a + b) / shares.length;
    return sum + shares.reduce((spread, share) => spread + (share - mean) ** 2, 0);
  }, 0);
}
