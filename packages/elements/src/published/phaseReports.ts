import type { PublishedMeasurement } from './publishedMeasurements.ts';

/** One label of phases, as in 'FCC+B2', and how many publications report it. */
export interface PhaseReport {
  phases: string;
  references: number;
}

/**
 * Every label that records of one alloy carry, the label of most publications first; of equals the
 * one that names more phases, then the alphabetically first. A publication that reports two labels
 * (two anneals, say) counts for both.
 */
export function phaseReports(records: readonly PublishedMeasurement[]): PhaseReport[] {
  const byLabel = new Map<string, Set<string>>();
  for (const { phases, doi } of records) {
    if (phases !== null) byLabel.set(phases, (byLabel.get(phases) ?? new Set()).add(doi));
  }
  return [...byLabel]
    .map(([phases, publications]) => ({ phases, references: publications.size }))
    .sort(
      (a, b) =>
        b.references - a.references || named(b.phases) - named(a.phases) || (a.phases < b.phases ? -1 : 1),
    );
}

const named = (phases: string): number => phases.split('+').length;
