/** The parts of the data, each an address under /data. */
export const dataParts = [
  { id: '', name: 'Overview' },
  { id: 'elements', name: 'Elements' },
  { id: 'pairs', name: 'Pairs' },
  { id: 'prices', name: 'Prices' },
  { id: 'alloys', name: 'Published alloys' },
  { id: 'materials', name: 'Raw materials' },
  { id: 'imports', name: 'Your own' },
  { id: 'versions', name: 'Versions' },
] as const;
