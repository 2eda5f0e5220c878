import type { Paragraph, Told } from './paragraph.ts';

/** The estimate recalibrated on melts of one's own, beside the published one; or how many melts are missing. */
export function ownParagraph({ own }: Told): Paragraph | null {
  if (own === null) return null;
  return { subject: 'own', heading: 'Phases, by your own melts', text: own.words, trust: null, sources: [] };
}
