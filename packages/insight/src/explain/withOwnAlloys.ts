import { numberInWords } from '../inWords.ts';
import {
  type KnownNeighbour,
  type OwnNeighbourAlloy,
  withOwnNeighbours,
} from '../neighbours/withOwnNeighbours.ts';
import type { Explanation } from './explain.ts';
import type { Paragraph } from './paragraph.ts';
import { citations, differing } from './publishedParagraph.ts';

/**
 * The same explanation with alloys of one's own, brought in or melted, among the neighbours, and told in a paragraph behind
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
  const told = own.map((one) => `${originOf(one)}, ${differing(one.distance)}: ${observed(one)}.`);
  return {
    subject: 'broughtIn',
    heading: 'Alloys of your own nearby',
    text: told.join(' '),
    trust: 'They stand here as they were brought in or recorded, and no estimate was trained on them.',
    sources: own.flatMap(({ formula, doi }) => citations(formula, doi)),
  };
}

function originOf({ formula, import: from, melt, composition }: KnownNeighbour): string {
  if (melt === null) return `${formula} (own, import ${from})`;
  const weighed = Object.keys(composition)
    .sort()
    .map((symbol) => `${symbol} ${numberInWords(composition[symbol]!, 1)}`);
  return `${formula} (own melt, as weighed ${weighed.join(', ')} at.%)`;
}

function observed({ phases, melt, methods }: KnownNeighbour): string {
  if (phases === null) return melt === null ? 'no phases told' : 'phases not looked at yet';
  return methods.length === 0 ? phases : `${phases}, observed by ${methods.join(' and ')}`;
}
