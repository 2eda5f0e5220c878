import { isSame } from '@tiegel/contract/terms';
import { type PhaseClass, phaseClassOf } from '@tiegel/elements/publishedAlloys';
import type { Neighbour } from '../neighbours/nearestPublished.ts';

/** What publications say of one composition. A report is a label in a publication: one that has two labels makes two. */
export interface ReportedClasses {
  reports: number;
  /** of them, one disordered fcc or bcc solution */
  oneSolution: number;
  /** of them, by class */
  classes: Record<PhaseClass, number>;
}

/** The reports of the alloy itself by class; null where nobody published its phases. */
export function reportedClasses(nearest: readonly Neighbour[]): ReportedClasses | null {
  const reports = nearest.find((one) => isSame(one) && one.reports.length > 0)?.reports ?? [];
  if (reports.length === 0) return null;
  const classes: Record<PhaseClass, number> = { fcc: 0, bcc: 0, both: 0, other: 0 };
  for (const { phases, references } of reports) classes[phaseClassOf(phases)] += references;
  const all = reports.reduce((sum, { references }) => sum + references, 0);
  return { reports: all, oneSolution: classes.fcc + classes.bcc, classes };
}
