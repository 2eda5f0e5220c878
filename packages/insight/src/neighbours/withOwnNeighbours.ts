import { formatComposition } from '@tiegel/elements';
import type { Composition } from '@tiegel/screening';
import { alphabetical, compositionDistance } from './compositionDistance.ts';
import type { Neighbour } from './nearestPublished.ts';

/** An alloy of one's own, brought in or melted, as neighbours tell of it. */
export interface OwnNeighbourAlloy {
  name: string;
  /** at.%; of a melt as weighed */
  composition: Composition;
  /** null: not told, or not looked at yet */
  phases: string | null;
  doi: string | null;
  /** number of the import that brought it; null: a melt */
  import: number | null;
  /** id of the melt; left out: it was brought in */
  melt?: string;
  /** how the phases of a melt were observed */
  methods?: readonly string[];
}

/** A neighbour, and whose it is: of one of the published alloys `import` and `melt` are null. */
export type KnownNeighbour = Neighbour & {
  own: boolean;
  import: number | null;
  melt: string | null;
  /** how the phases of an own melt were observed */
  methods: readonly string[];
};

/** An own alloy as near as this, as a share of atoms, is told however many published ones are nearer. */
const NEAR = 0.15;

/**
 * The nearest published alloys and those of one's own among them, nearest first; of equals one's
 * own. Every published one stays. Own ones are those within 15 % of the atoms, or as near as the
 * farthest published one, at most as many as there are published ones. Models were trained on
 * published alloys alone, whatever is near here.
 */
export function withOwnNeighbours(
  composition: Composition,
  published: readonly Neighbour[],
  own: readonly OwnNeighbourAlloy[],
): KnownNeighbour[] {
  const candidate = alphabetical(composition);
  const farthest = Math.max(NEAR, ...published.map(({ distance }) => distance));
  const near = own
    .map((one) => knownOf(one, compositionDistance(candidate, alphabetical(one.composition))))
    .filter(({ distance }) => distance <= farthest)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, published.length);
  const others = published.map((one) => ({ ...one, own: false, import: null, melt: null, methods: [] }));
  return [...near, ...others].sort((a, b) => a.distance - b.distance);
}

function knownOf(
  { name, composition, phases, doi, import: from, melt, methods = [] }: OwnNeighbourAlloy,
  distance: number,
): KnownNeighbour {
  return {
    ...{ formula: name.trim() || formatComposition(composition), composition, distance, phases },
    reports: phases === null ? [] : [{ phases, references: doi === null ? 0 : 1 }],
    publications: phases === null || doi === null ? 0 : 1,
    doi: doi === null ? [] : [doi],
    ...{ own: true, import: from, melt: melt ?? null, methods },
  };
}
