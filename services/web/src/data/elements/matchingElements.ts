import type { ElementView } from '../../server/types.ts';

/** The elements that a text means: by symbol, else by the beginning of a name, a family, or a hazard; several parted by commas or spaces where all are symbols. */
export function matchingElements(elements: readonly ElementView[], text: string): readonly ElementView[] {
  const words = text.trim().toLowerCase();
  if (words === '') return elements;
  const symbols = new Set(words.split(/[\s,;]+/));
  const named = elements.filter(({ symbol }) => symbols.has(symbol.toLowerCase()));
  if (named.length === symbols.size) return named;
  return elements.filter(
    ({ symbol, name, family, hazards }) =>
      symbol.toLowerCase().startsWith(words) ||
      name.toLowerCase().includes(words) ||
      family.includes(words) ||
      hazards.some(({ kind }) => kind.includes(words)),
  );
}
