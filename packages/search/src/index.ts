export { candidateColumns } from './candidateColumns.ts';
export { demonstration } from './demonstration.ts';
export { keptCandidates } from './keptCandidates.ts';
export { type ChargeSheets, openChargeSheets, type SavedChargeSheet } from './melts/openChargeSheets.ts';
export { type Melts, type MeltView, openMelts } from './melts/openMelts.ts';
export { DEFAULT_MAX_POINTS, openSearches, type SearchesOptions } from './openSearches.ts';
export type { ExportHead, Searches } from './searches.ts';
export { openShortlists, type PickRequest, type Shortlists } from './shortlists/openShortlists.ts';
export { type ShortlistLine, shortlistLines } from './shortlists/shortlistLines.ts';
