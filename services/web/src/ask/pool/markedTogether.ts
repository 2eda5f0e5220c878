import type { Mark } from '../draft/draft.ts';

/**
 * Marks after a whole group or family was chosen: all of its elements get the mark, or, where all
 * have it already, lose it.
 */
export function markedTogether(
  marks: Readonly<Record<string, Mark>>,
  symbols: readonly string[],
  mark: Mark,
): Record<string, Mark> {
  const all = symbols.every((symbol) => marks[symbol] === mark);
  const others = Object.entries(marks).filter(([symbol]) => !symbols.includes(symbol));
  const given = all ? [] : symbols.map((symbol) => [symbol, mark] as const);
  return Object.fromEntries([...others, ...given]);
}
