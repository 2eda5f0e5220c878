import { type PhaseReport, type PublishedAlloy, publishedAlloys } from '@tiegel/elements/publishedAlloys';
import type { Composition } from '@tiegel/screening';
import { alphabetical, compositionDistance } from './compositionDistance.ts';

/** A published alloy and how far it is: `distance` is the share of atoms that differ, 0 to 1. */
export interface Neighbour {
  formula: string;
  /** at.% */
  composition: Composition;
  distance: number;
  /** What most publications report, as in 'FCC+B2'; null where none was reported. */
  phases: string | null;
  /** Every label and how many publications report it, most first. */
  reports: readonly PhaseReport[];
  /** How many publications report phases; one that reports several labels counts in each of `reports`. */
  publications: number;
  doi: readonly string[];
}

/** Holds for every list of neighbours. */
export const neighboursTrust =
  'Published phases depend on processing, annealing and method, and publications disagree on half of ' +
  'the compositions that more than one of them describes. The list of published alloys is a selection: ' +
  'that nothing is near does not make an alloy new.';

/**
 * The published alloys nearest in composition, nearest first; of equals the one with more
 * publications, then by formula.
 * @param count how many
 */
export function nearestPublished(composition: Composition, count = 5): Neighbour[] {
  const candidate = alphabetical(composition);
  return publishedAlloys()
    .map((alloy) => ({ alloy, distance: compositionDistance(candidate, alloy.composition) }))
    .sort((a, b) => a.distance - b.distance || before(a.alloy, b.alloy))
    .slice(0, count)
    .map(({ alloy: { formula, composition: published, phases, reports, reporting, doi }, distance }) => ({
      formula,
      composition: published,
      distance,
      phases,
      reports,
      publications: reporting,
      doi,
    }));
}

function before(one: PublishedAlloy, other: PublishedAlloy): number {
  return other.references - one.references || (one.formula < other.formula ? -1 : 1);
}

/**
 * Novelty of an alloy: the distance to the nearest published one, 0 to 1; 0.2 says that every fifth
 * atom differs. Measured against the published alloys of this project, which are a selection.
 * @param among all of them, or those that a question is about
 */
export function novelty(
  composition: Composition,
  among: readonly Pick<PublishedAlloy, 'composition'>[] = publishedAlloys(),
): number {
  const candidate = alphabetical(composition);
  return Math.min(...among.map((alloy) => compositionDistance(candidate, alloy.composition)));
}
