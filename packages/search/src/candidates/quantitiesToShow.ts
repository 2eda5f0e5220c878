import type { SearchView } from '@tiegel/contract';

/** So many columns of values at once. */
export const mostQuantities = 8;

/** What a search ranks and limits, each once: shown where nobody said which. */
export function quantitiesToShow({ specification: { rank, limits } }: SearchView): string[] {
  return [...new Set([...rank, ...limits].map(({ quantity }) => quantity))].slice(0, mostQuantities);
}
