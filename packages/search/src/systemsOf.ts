/** A set of elements that has kept candidates: the best of them, and how many there are. */
export interface KeptSystem {
  /** alphabetical */
  symbols: string[];
  rank: number;
  /** at.% of the best candidate */
  composition: Record<string, number>;
  kept: number;
}

/** Gathers candidates, told in the order of rank, by their sets of elements. */
export function systemsOf() {
  const found = new Map<string, { rank: number; parts: string; kept: number }>();
  return {
    /** A candidate: its symbols with spaces between, its parts of the grid, its rank. */
    add(system: string, parts: string, rank: number): void {
      const known = found.get(system);
      if (known) known.kept += 1;
      else found.set(system, { rank, parts, kept: 1 });
    },
    /** In the order of their best candidates. */
    best(): KeptSystem[] {
      return [...found].map(([system, { rank, parts, kept }]) => {
        const symbols = system.split(' ');
        const amounts = parts.split(' ').map(Number);
        const whole = amounts.reduce((sum, amount) => sum + amount, 0);
        const composition = Object.fromEntries(
          symbols.map((symbol, place) => [symbol, (100 * amounts[place]!) / whole]),
        );
        return { symbols, rank, composition, kept };
      });
    },
  };
}
