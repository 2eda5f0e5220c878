import type { CriterionRecord } from './criterionRecord.ts';

/** The verdict of a rule with its sign, which goes by what follows: to expect a second phase is bad news. */
export function verdictInWords(
  { predictsSecondPhase, positiveClass }: Pick<CriterionRecord, 'predictsSecondPhase' | 'positiveClass'>,
  met: boolean,
): string {
  if (!predictsSecondPhase) return met ? '✓ met' : '× not met';
  return met ? `× expects ${positiveClass}` : `✓ does not expect ${positiveClass}`;
}
