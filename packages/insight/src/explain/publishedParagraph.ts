import { isSame, reportsInWords } from '@tiegel/contract/terms';
import { sources } from '@tiegel/elements';
import { publishedAlloys, publishedSource } from '@tiegel/elements/publishedAlloys';
import { percentInWords } from '../inWords.ts';
import { type Neighbour, neighboursTrust } from '../neighbours/nearestPublished.ts';
import type { Paragraph, Told } from './paragraph.ts';

const MOST_DOI = 3;
const MOST_NEIGHBOURS = 3;

/** What is published of the alloy itself, every report with its count, or of the nearest ones. */
export function publishedParagraph({ dossier: { nearest } }: Told): Paragraph {
  const [first, ...others] = nearest;
  const same = first !== undefined && isSame(first);
  const told = same
    ? [`Published as ${first.formula}: ${published(first)}.`, ...beside(others)]
    : [notInTable(), ...beside(nearest)];
  return {
    subject: 'published',
    heading: 'What is published',
    text: told.join(' '),
    trust: neighboursTrust,
    sources: [
      sources[publishedSource].text,
      ...nearest.slice(0, same ? 1 : MOST_NEIGHBOURS).flatMap(({ formula, doi }) => citations(formula, doi)),
    ],
  };
}

/** The table lacks well-known alloys, so that nothing more can be said. */
function notInTable(): string {
  return `Not in the table of published alloys here (${publishedAlloys().length} alloys, a part of what is published).`;
}

/** All that publications report of a neighbour, in the words of the pages. */
function published(neighbour: Neighbour): string {
  return reportsInWords({ ...neighbour, own: false, melt: null, methods: [] });
}

function beside(neighbours: readonly Neighbour[]): string[] {
  return neighbours
    .slice(0, MOST_NEIGHBOURS)
    .map((neighbour) => `${neighbour.formula}, ${differing(neighbour.distance)}: ${published(neighbour)}.`);
}

/** How far a neighbour is, in words. */
export function differing(distance: number): string {
  return distance < 0.01
    ? 'less than 1 % of the atoms apart'
    : `${percentInWords(distance)} of the atoms apart`;
}

/** Where it is published, in words; none without a DOI. */
export function citations(formula: string, doi: readonly string[]): string[] {
  if (doi.length === 0) return [];
  const more = doi.length > MOST_DOI ? ` and ${doi.length - MOST_DOI} more` : '';
  return [`${formula}: doi ${doi.slice(0, MOST_DOI).join(', ')}${more}`];
}
