/** What is asked of the kept candidates; ranges are inclusive. */
export interface Filters {
  ranges: { quantity: string; min?: number; max?: number }[];
  has: string[];
  without: string[];
  /** only members of the search's Pareto front */
  front?: true;
}

export const noFilters: Filters = { ranges: [], has: [], without: [] };

/** Reads filters from an address, where they stand as the API takes them: min.density=7, has=Fe,Ni. What is no number is passed over. */
export function readFilters(address: URLSearchParams): Filters {
  const ranges = new Map<string, { quantity: string; min?: number; max?: number }>();
  for (const [key, text] of address) {
    const [, edge, quantity] = /^(min|max)\.(\w+)$/.exec(key) ?? [];
    const value = Number(text);
    if (quantity === undefined || text.trim() === '' || !Number.isFinite(value)) continue;
    ranges.set(quantity, { ...ranges.get(quantity), quantity, [edge as 'min' | 'max']: value });
  }
  return {
    ranges: [...ranges.values()],
    has: symbolsIn(address.get('has')),
    without: symbolsIn(address.get('without')),
    ...(address.get('front') === 'yes' ? { front: true as const } : {}),
  };
}

/** Writes filters into an address, in the place of those that stood there. */
export function writeFilters(
  address: URLSearchParams,
  { ranges, has, without, front }: Filters,
): URLSearchParams {
  const written = new URLSearchParams(
    [...address].filter(([key]) => !/^(?:(?:min|max)\.\w+|has|without|front)$/.test(key)),
  );
  for (const { quantity, min, max } of ranges) {
    if (min !== undefined) written.set(`min.${quantity}`, String(min));
    if (max !== undefined) written.set(`max.${quantity}`, String(max));
  }
  if (has.length > 0) written.set('has', has.join(','));
  if (without.length > 0) written.set('without', without.join(','));
  if (front) written.set('front', 'yes');
  return written;
}

/** How many sentences the filters make. */
export function countFilters({ ranges, has, without, front }: Filters): number {
  return ranges.length + has.length + without.length + (front ? 1 : 0);
}

export function isFiltered(filters: Filters): boolean {
  return countFilters(filters) > 0;
}

function symbolsIn(list: string | null): string[] {
  return (list ?? '').split(',').filter((symbol) => /^[A-Z][a-z]?$/.test(symbol));
}
