import type { Composition } from '@tiegel/screening';
import { alphabetical, compositionDistance } from './compositionDistance.ts';
import type { Neighbour } from './nearestPublished.ts';

/** An alloy that somebody brought in, as neighbours tell of it. */
export interface OwnNeighbourAlloy {
  name: string;
  /** at.% */
  composition: Composition;
  phases: string | null;
  doi: string | null;
  /** number of the import that brought it */
  import: number;
}

/** A neighbour, and whether it was brought in; `import` is null for one of the published alloys. */
export type KnownNeighbour = Neighbour & { own: boolean; import: number | null };

/**
 * The nearest of published and own alloys together, as many as there were published ones, nearest
 * first; of equals one's own. Models were trained on published alloys alone, whatever is near here.
 */
export function withOwnNeighbours(
  composition: Composition,
  published: readonly Neighbour[],
  own: readonly OwnNeighbourAlloy[],
): KnownNeighbour[] {
  const candidate = alphabetical(composition);
  const brought = own.map(({ name, composition: made, phases, doi, import: from }) => ({
    ...{ formula: name, composition: made, phases, own: true, import: from },
    distance: compositionDistance(candidate, alphabetical(made)),
    reports: phases === null ? [] : [{ phases, references: doi === null ? 0 : 1 }],
    doi: doi === null ? [] : [doi],
  }));
  return [...brought, ...published.map((one) => ({ ...one, own: false, import: null }))]
    .sort((a, b) => a.distance - b.distance)
    .slice(0, published.length);
}
