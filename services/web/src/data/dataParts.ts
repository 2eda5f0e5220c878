/** The parts of the data, each an address under /data. */
export const dataParts = [
  { id: '', name: 'Overview' },
  { id: 'elements', name: 'Elements' },
  { id: 'pairs', name: 'Pairs' },
  { id: 'prices', name: 'Prices' },
] as const;
