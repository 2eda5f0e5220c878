import { type Criterion, criteria, type PositiveClass, predicateText, type Source } from '@tiegel/screening';
import { trainedCriteria } from '../data/criteria.ts';
import { lateQuantities } from '../late/lateQuantities.ts';
import type { Measured } from './measureCriteria.ts';

/** A criterion with its record on the published alloys; counts are null where those cannot test it. */
export interface CriterionRecord extends Nullable<Measured> {
  id: string;
  /** Whose rule it is, as cited. */
  name: string;
  /** What follows where it holds. */
  claim: string;
  /** As in papers: '−15 ≤ ΔH ≤ 5 kJ/mol, δ ≤ 6.5 %'. */
  formula: string;
  /** Which alloys it speaks of, written alike; null: of all. */
  scope: string | null;
  /** The class of alloys that it predicts, in words. */
  positiveClass: string;
  /** How published labels show that class; null: they cannot. */
  predicts: PositiveClass['observed'];
  /** Whether that class is a phase beside the solution: then it is bad news that the rule is met. */
  predictsSecondPhase: boolean;
  source: Source;
  /** What to beware of; null: nothing. */
  caution: string | null;
  /** Why it is not testable here; null where it is. */
  untested: string | null;
}

type Nullable<T> = { [Key in keyof T]: T[Key] | null };

const unmeasured = {
  n: null,
  tp: null,
  fp: null,
  fn: null,
  tn: null,
  balancedAccuracy: null,
  interval: null,
};

/**
 * Every criterion with its record, in the order of the criteria.
 * @param measured by id; what `npm run train` found by default
 */
export function criterionRecords(
  measured: Readonly<Record<string, Measured>> = trainedCriteria,
): CriterionRecord[] {
  return criteria.map((criterion) => ({
    id: criterion.id,
    name: criterion.name,
    claim: criterion.claim,
    formula: predicateText(criterion.predicate, lateNames),
    scope: criterion.scope && predicateText(criterion.scope, lateNames),
    positiveClass: criterion.positiveClass.what,
    predicts: criterion.positiveClass.observed,
    predictsSecondPhase: criterion.positiveClass.isSecondPhase ?? false,
    source: criterion.source,
    caution: criterion.caution ?? null,
    ...(measured[criterion.id] ?? unmeasured),
    untested: untestedOf(criterion),
  }));
}

const lateNames = Object.fromEntries(lateQuantities.map(({ id, symbol, unit }) => [id, { symbol, unit }]));

function untestedOf({ positiveClass }: Criterion): string | null {
  return positiveClass.observed === null ? positiveClass.untested : null;
}
