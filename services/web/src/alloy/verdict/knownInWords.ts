import type { Neighbour, PhaseClass, PhaseEstimate } from '@tiegel/contract';

/** The classes of phases, by what they are in the metal. */
export const classWords: Readonly<Record<PhaseClass, string>> = {
  fcc: 'one solid solution, fcc',
  bcc: 'one solid solution, bcc',
  both: 'fcc beside bcc',
  other: 'something else: compounds, order, more phases',
};

/** What the words of the classes mean, for who does not know them. */
export const latticeWords: Readonly<Record<'fcc' | 'bcc', string>> = {
  fcc: 'fcc: the atoms are packed as in nickel and copper; such alloys are usually tough.',
  bcc: 'bcc: the atoms are packed as in chromium and tungsten; such alloys are usually strong, and less tough when cold.',
};

/** What most publications report of the alloy, or one's own record of it, as one plain sentence; null where they do not agree on one disordered solution or several phases. */
export function knownInWords({ reports, publications, own, melt }: Neighbour): string | null {
  const all = publications ?? reports.reduce((sum, { references }) => sum + references, 0);
  const [first] = reports;
  if (!first || (!own && first.references * 2 <= all)) return null;
  const published = all === 1 ? 'in the one publication' : `in ${first.references} of ${all} publications`;
  const where = melt ? 'in your own melt' : own ? 'as you brought it in' : published;
  const lattice = first.phases.toLowerCase();
  if (lattice === 'fcc' || lattice === 'bcc') return `Known: one uniform metal phase (${lattice}), ${where}.`;
  return first.phases === 'Other'
    ? `Known: neither fcc nor bcc alone, ${where}.`
    : `Known: ${first.phases}, ${where}.`;
}

/** Whether the estimate takes a side between one uniform phase and several; null without a basis. */
export function sideOf({ likely, basis }: PhaseEstimate): 'one' | 'several' | 'either' | null {
  if (likely === null || basis === 'none') return null;
  const single = likely.some((one) => one === 'fcc' || one === 'bcc');
  const several = likely.some((one) => one === 'both' || one === 'other');
  return single && several ? 'either' : single ? 'one' : 'several';
}
