export type { Caution } from './caution.ts';
export { chargeNumber, numberOfCharge } from './chargeNumber.ts';
export {
  type ChargeRequest,
  finestResolution,
  greatestLoss,
  heaviestBatch,
  leastPurity,
} from './chargeRequest.ts';
export { type ChargeEntry, chargeRequestOf } from './chargeRequestOf.ts';
export { chargeSheet } from './chargeSheet.ts';
export { type Material, type Materials, pureMaterials } from './material.ts';
export {
  type AmountKind,
  amountKinds,
  type MaterialEntry,
  materialOf,
  repeatedNames,
} from './materialEntry.ts';
export { type MeltDoubt, meltDoubts } from './meltDoubts.ts';
export { type Melt, meltOf } from './meltOf.ts';
export { decimalsOf } from './onBalance.ts';
export { materialsCsv, mostMaterials, readMaterials } from './readMaterials.ts';
export type { ChargeLine, ChargeSheet } from './sheet.ts';
