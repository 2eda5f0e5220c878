export * from './candidateViews.ts';
export {
  type Difference,
  differencesOf,
  type SearchDifferences,
  searchDifferencesSchema,
} from './differencesOf.ts';
export * from './distributions.ts';
export * from './exportFormats.ts';
export * from './facts.ts';
export { faultsOf } from './faultsOf.ts';
export * from './imports.ts';
export { limitTolerance } from './limitTolerance.ts';
export * from './melt.ts';
export * from './meltBounds.ts';
export * from './meltWords.ts';
export { nearest } from './nearest.ts';
export * from './outcome.ts';
export * from './outcomeCodec.ts';
export * from './plan.ts';
export * from './problem.ts';
export * from './problems.ts';
export * from './questionOf.ts';
export { type Hours, hoursInWords, isWithin, isZone, nextStart } from './schedule/hours.ts';
export { type Priority, priorities } from './schedule/priorities.ts';
export { type Schedule, scheduleSchema } from './schedule/schedule.ts';
export { priorityInWords, scheduleInWords } from './schedule/scheduleInWords.ts';
export { usualSchedule } from './schedule/usualSchedule.ts';
export * from './search.ts';
export * from './searchSpecificationFor.ts';
export * from './shortlist/shortlist.ts';
export * from './shortlist/shortlistChange.ts';
export * from './shortlist/shortlistOf.ts';
export * from './shortlist/shortlistStatuses.ts';
export { conditionsSchema, type KnownCondition } from './specification/conditions.ts';
export { effectivePool } from './specification/effectivePool.ts';
export { partsOfBounds } from './specification/partsOfBounds.ts';
export { limitsOn } from './specification/requestSchema.ts';
export { steps } from './specification/steps.ts';
export { type Tally, tallies } from './specification/tally.ts';
export * from './specification.ts';
