export { type Processing, publishedSource } from '../data/publishedRecords.ts';
export type { PhaseReport } from './phaseReports.ts';
export * from './publishedAlloys.ts';
export * from './publishedMeasurements.ts';
