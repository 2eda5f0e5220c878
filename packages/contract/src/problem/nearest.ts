/** Longest word that is compared at all: a request may carry a megabyte where a name belongs. */
const LONGEST_WORD = 64;

/**
 * The known word that a person most probably meant, or null where none is near. Capitals do not
 * count as a difference. A long word may differ by a third of its letters, at most three; one of
 * two letters by its capitals alone, for nearly every pair of letters is one letter away from an
 * element. Failing that, a known word that contains the whole of a longer one ('enthalpy' in
 * 'mixingEnthalpy'). Among equally near words the first known one is taken.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  if (word.length === 0 || word.length > LONGEST_WORD) return null;
  const sought = word.toLowerCase();
  const allowed = sought.length <= 2 ? 0 : Math.min(3, Math.max(1, Math.floor(sought.length / 3)));
  let best: string | null = null;
  let least = allowed + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - sought.length) >= least) continue;
    const distance = editDistance(sought, candidate.toLowerCase());
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best ?? containing(sought, known);
}

function containing(sought: string, known: readonly string[]): string | null {
  if (sought.length < 4) return null;
  return known.find((candidate) => candidate.toLowerCase().includes(sought)) ?? null;
}

/**
 * Damerau–Levenshtein distance in its restricted form: letters put in, left out, changed, or two
 * neighbours exchanged; no letter is edited twice.
 */
export function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const changed = from[row - 1] === to[column - 1] ? 0 : 1;
      let distance = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + changed);
      const exchanged =
        row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      if (exchanged) distance = Math.min(distance, beforeLast[column - 2]! + 1);
      current.push(distance);
    }
    beforeLast = last;
    last = current;
  }
  return last[to.length]!;
}
