/** How a column of element data is averaged over an alloy: by atoms, by mass or by volume. */
export const mixings = ['mole', 'mass', 'volume'] as const;
export type Mixing = (typeof mixings)[number];
