import type { CriterionRecord, OwnEvidence } from '@tiegel/contract';

/** The numbers of one record: how often a rule was right on some alloys; null where they cannot test it. */
export type RuleRecord = Pick<
  CriterionRecord,
  'n' | 'tp' | 'fp' | 'fn' | 'tn' | 'balancedAccuracy' | 'interval' | 'untested'
>;

/** Alloys on which rules are tested: the published ones, and others beside them. */
export interface RecordSource {
  /** head of its columns */
  name: string;
  /** by the id of the rule */
  records: Readonly<Record<string, RuleRecord>>;
}

/** The published alloys as a source of records. */
export function publishedSource(criteria: readonly CriterionRecord[]): RecordSource {
  return { name: 'Published alloys', records: Object.fromEntries(criteria.map((one) => [one.id, one])) };
}

/** The melts of one's own as a source of records. */
export function ownSource({ criteria }: OwnEvidence): RecordSource {
  const records = criteria.map((one) => [one.id, { ...one, untested: null }] as const);
  return { name: 'Own melts', records: Object.fromEntries(records) };
}
