import {
  type KnownNeighbour,
  type OwnNeighbourAlloy,
  withOwnNeighbours,
} from '../neighbours/withOwnNeighbours.ts';
import type { Explanation } from './explain.ts';
import type { Paragraph } from './paragraph.ts';
import { citations, differing } from './publishedParagraph.ts';

/**
 * The same explanation with alloys of one's own among the neighbours, and told in a paragraph behind
 * that of the published ones; the estimate of the phases and its distance know published ones alone.
 */
export function withOwnAlloys(
  told: Explanation,
  own: readonly OwnNeighbourAlloy[],
): Omit<Explanation, 'nearest'> & { nearest: KnownNeighbour[] } {
  const nearest = withOwnNeighbours(told.composition, told.nearest, own);
  const paragraph = broughtInParagraph(nearest);
  return {
    ...told,
    nearest,
    paragraphs: told.paragraphs.flatMap((one) =>
      one.subject === 'published' && paragraph !== null ? [one, paragraph] : [one],
    ),
  };
}

function broughtInParagraph(nearest: readonly KnownNeighbour[]): Paragraph | null {
  const own = nearest.filter((one) => one.own);
  if (own.length === 0) return null;
  const told = own.map(
    ({ formula, import: from, distance, phases }) =>
      `${formula} (own, import ${from}), ${differing(distance)}: ${phases ?? 'no phases told'}.`,
  );
  return {
    subject: 'broughtIn',
    heading: 'Alloys of your own nearby',
    text: told.join(' '),
    trust: 'They were brought in as they stand here, and nothing was trained on them.',
    sources: own.flatMap(({ formula, doi }) => citations(formula, doi)),
  };
}
