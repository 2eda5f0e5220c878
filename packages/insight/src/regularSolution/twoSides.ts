/** The elements of a mode that go one way and those that go the other, largest change first. */
export interface TwoSides {
  rising: string[];
  falling: string[];
}

/**
 * The elements of either sign in a mode, leaving out whoever hardly takes part.
 * @param share the least size that counts, as a share of the largest change on the same side
 */
export function twoSides(mode: Readonly<Record<string, number>>, share: number): TwoSides {
  const side = (sign: 1 | -1): string[] => {
    const entries = Object.entries(mode)
      .map(([symbol, change]) => ({ symbol, size: sign * change }))
      .filter(({ size }) => size > 0)
      .sort((a, b) => rounded(b.size) - rounded(a.size) || (a.symbol < b.symbol ? -1 : 1));
    const least = (entries[0]?.size ?? 0) * share;
    return entries.filter(({ size }) => size >= least).map(({ symbol }) => symbol);
  };
  return { rising: side(1), falling: side(-1) };
}

/** Sizes that differ by rounding alone are equal, so that the alphabet orders them. */
const rounded = (size: number): number => Math.round(size * 1e9);
