import { formatCount } from '../../numbers/formatNumber.ts';
import type { AlloyLayer } from './layersOf.ts';

/**
 * What the layers over a scatter hold, and of which data their values are.
 * @param version of the data of the layers; null: not known yet  @param ofSearch that of the candidates
 */
export function layersInWords(
  layers: readonly Pick<AlloyLayer, 'name' | 'points'>[],
  version: string | null,
  ofSearch: string,
): string[] {
  if (layers.length === 0) return [];
  const told = layers.map(
    ({ name, points }) =>
      `${name}: ${formatCount(points.length)}, their values computed like those of the candidates; some may lie outside the axes.`,
  );
  return version === null || version === ofSearch
    ? told
    : [...told, `These are of data version ${version}, the candidates of data version ${ofSearch}.`];
}
