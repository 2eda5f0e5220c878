import type { Neighbour } from './neighbour.ts';

/** Whose an alloy is, and what is reported of it. */
export interface Reported extends Pick<Neighbour, 'own' | 'melt' | 'publications'> {
  reports: readonly Neighbour['reports'][number][];
  methods: readonly string[];
}

/** Shares of atoms that differ below this are the same alloy, differently rounded. */
const same = 0.005;

/** Whether a published alloy is this very one. */
export function isSame({ distance }: Pick<Neighbour, 'distance'>): boolean {
  return distance < same;
}

/** 'FCC in 17 of 20 publications, FCC+BCC in 2'; 'no phases reported'; of one's own the phases, of a melt how they were observed. */
export function reportsInWords({ reports, publications, own, melt, methods }: Reported): string {
  // One publication that reports two labels, of two anneals say, counts for both of them and is one.
  const all = publications ?? reports.reduce((sum, { references }) => sum + references, 0);
  const [first, ...others] = reports;
  if (!first) return melt === null ? 'no phases reported' : 'phases not looked at yet';
  if (own) return methods.length === 0 ? first.phases : `${first.phases}, by ${methods.join(' and ')}`;
  if (others.length === 0) return `${first.phases} in ${allInWords(all)}`;
  if (all === 1) return `${reports.map(({ phases }) => phases).join(' and ')} in ${allInWords(all)}`;
  const rest = others.map(({ phases, references }) => `${phases} in ${references}`);
  return `${first.phases} in ${first.references} of ${all} publications, ${rest.join(', ')}`;
}

/** So many publications, and no other reports anything else. */
function allInWords(count: number): string {
  if (count === 1) return 'one publication';
  return count === 2 ? 'both publications' : `all ${count} publications`;
}
