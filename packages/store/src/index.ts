export type { CandidateSet } from './candidateSource.ts';
export type { CandidateTable, NewCandidate } from './candidateTable.ts';
export type { CandidateColumns } from './candidateValues.ts';
export type { ChargeSheetTable, StoredChargeSheet } from './chargeSheets.ts';
export { type Ledger, MERGED } from './ledger.ts';
export { type MeltTable, type MeltVersion, meltId, type StoredAttachment, type StoredMelt } from './melts.ts';
export { openStore, type Store, type StoreOptions } from './openStore.ts';
export type { NewSearch, SearchChange, SearchRecord, SearchTable } from './searches.ts';
export type { ShortlistTable } from './shortlists.ts';
