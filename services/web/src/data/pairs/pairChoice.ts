/** The elements that a text names among those that are known, in order of `known`, and the words that name none. */
export function chosenElements(
  known: readonly string[],
  text: string,
): { chosen: string[]; strange: string[] } {
  const words = text.split(/[\s,;–-]+/).filter((word) => word !== '');
  const named = new Map(known.map((symbol) => [symbol.toLowerCase(), symbol]));
  const found = new Set(words.map((word) => named.get(word.toLowerCase())));
  return {
    chosen: known.filter((symbol) => found.has(symbol)),
    strange: words.filter((word) => !named.has(word.toLowerCase())),
  };
}

/** Pairs of the elements chosen: all where there are none, every pair of a single one, else those among them. */
export function pairsAmong<Pair extends { a: string; b: string }>(
  pairs: readonly Pair[],
  chosen: readonly string[],
): readonly Pair[] {
  if (chosen.length === 0) return pairs;
  const among = new Set(chosen);
  if (chosen.length === 1) return pairs.filter(({ a, b }) => among.has(a) || among.has(b));
  return pairs.filter(({ a, b }) => among.has(a) && among.has(b));
}

/** How strong an enthalpy of mixing (kJ/mol) is, in steps of tint. */
const steps = [2, 10, 30];

/** 'seek-3' … 'chance' … 'avoid-3': the tint of a cell; its number stands in it anyway. */
export function toneOf(mixingEnthalpy: number): string {
  const strength = steps.filter((step) => Math.abs(mixingEnthalpy) >= step).length;
  if (strength === 0) return 'chance';
  return `${mixingEnthalpy < 0 ? 'seek' : 'avoid'}-${strength}`;
}
