/** A set of elements that has kept candidates: the best of them, and how many there are. */
export interface KeptSystem {
  /** symbols, alphabetical, with spaces between */
  system: string;
  /** of the best */
  rank: number;
  kept: number;
}

/** Gathers candidates, told in the order of rank, by their sets of elements. */
export function systemsOf() {
  const found = new Map<string, KeptSystem>();
  return {
    add(system: string, rank: number): void {
      const known = found.get(system);
      if (known) known.kept += 1;
      else found.set(system, { system, rank, kept: 1 });
    },
    /** In the order of their best candidates. */
    best: (): KeptSystem[] => [...found.values()],
  };
}
