/**
 * The contract's words and numbers, without its schemas: whoever checks no request need not load the
 * library that checks. `index.ts` holds both.
 */
export * from './access/roles.ts';
export { likelyInWords } from './alloy/likelyInWords.ts';
export * from './alloy/phaseClasses.ts';
export { isSame, reportsInWords } from './alloy/reportsInWords.ts';
export * from './comparison/comparison.ts';
export { comparisonGroups } from './comparison/comparisonGroups.ts';
export * from './comparison/differenceAmong.ts';
export { extremeOf } from './comparison/extremeOf.ts';
export { onlyDifferent } from './comparison/onlyDifferent.ts';
export { searchGroups } from './comparison/searchGroups.ts';
export { toldOnce } from './comparison/toldOnce.ts';
export { decimalsBeside } from './decimalsBeside.ts';
export { verdictInWords } from './evidence/verdictInWords.ts';
export { fixedDecimals } from './fixedDecimals.ts';
export { inDigits } from './inDigits.ts';
export * from './known/mixings.ts';
export * from './melt/meltBounds.ts';
export * from './melt/meltWords.ts';
export { mostWorkers } from './mostWorkers.ts';
export { nameInSentence } from './nameInSentence.ts';
export { editDistance, nearest } from './problem/nearest.ts';
export * from './problem/problem.ts';
export * from './problem/problems.ts';
export { type Hours, hoursInWords, isWithin, isZone, nextStart } from './schedule/hours.ts';
export { type Priority, priorities } from './schedule/priorities.ts';
export { priorityInWords, scheduleInWords } from './schedule/scheduleInWords.ts';
export { usualSchedule } from './schedule/usualSchedule.ts';
export { differencesOf } from './search/differencesOf.ts';
export * from './search/exportFormats.ts';
export { expressionsOf } from './search/expressionsOf.ts';
export * from './search/outcome.ts';
export * from './search/questionOf.ts';
export { warnsOfPrices } from './search/warnsOfPrices.ts';
export * from './shortlist/conflictsOf.ts';
export * from './shortlist/settlingAct.ts';
export * from './shortlist/shortlistOf.ts';
export * from './shortlist/shortlistStatuses.ts';
export { effectivePool } from './specification/effectivePool.ts';
export { limitTolerance } from './specification/limitTolerance.ts';
export { marginOf } from './specification/marginOf.ts';
export { meetsLimit } from './specification/meetsLimit.ts';
export { outsideSpace, type SearchSpace } from './specification/outsideSpace.ts';
export { parseSpecification } from './specification/parseSpecification.ts';
export { partsOfBounds } from './specification/partsOfBounds.ts';
export { steps } from './specification/steps.ts';
