import type { Amounts, CriterionRecord, Explanation, Values } from '@tiegel/contract';
import { criteria, isSpokenOf } from '@tiegel/screening';

/** The verdict of a rule with its sign, which goes by what follows: to expect a second phase is bad news. */
export function verdictInWords(
  { predictsSecondPhase, positiveClass }: Pick<CriterionRecord, 'predictsSecondPhase' | 'positiveClass'>,
  met: boolean,
): string {
  if (!predictsSecondPhase) return met ? '✓ met' : '× not met';
  return met ? `× expects ${positiveClass}` : `✓ does not expect ${positiveClass}`;
}

/** Why a rule gives no verdict: it speaks of other alloys, or a value lacks. */
export function silenceInWords(
  id: string,
  {
    composition,
    values,
    explanation,
  }: { composition: Amounts; values: Values; explanation: Explanation | null },
): string {
  const criterion = criteria.find((one) => one.id === id);
  if (!criterion) return '– no verdict';
  const all = { ...values, ...explanation?.quantities };
  return isSpokenOf(criterion, composition, all) === false ? '– of other alloys' : '– a value lacks';
}
