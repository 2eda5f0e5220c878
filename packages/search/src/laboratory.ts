/** What a laboratory writes down: shortlists, charge sheets, melts, who has a token; and what is known of systems already. */

export { type GivenToken, type Holder, openTokens, type Tokens } from './access/openTokens.ts';
export { systemsAsked, systemView } from './candidates/systemsAsked.ts';
export { type ChargeSheets, openChargeSheets, type SavedChargeSheet } from './melts/openChargeSheets.ts';
export { type Melts, type MeltView, openMelts } from './melts/openMelts.ts';
export { ownNeighbours } from './melts/ownNeighbours.ts';
export { openShortlists, type PickRequest, type Shortlists } from './shortlists/openShortlists.ts';
