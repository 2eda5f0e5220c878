export type { Caution } from './cautions.ts';
export {
  type ChargeRequest,
  checkPurity,
  finestResolution,
  greatestLoss,
  heaviestBatch,
  leastPurity,
} from './chargeRequest.ts';
export { type ChargeLine, type ChargeSheet, chargeSheet } from './chargeSheet.ts';
export { type Material, type Materials, pureMaterials } from './material.ts';
export {
  type AmountKind,
  amountKinds,
  type MaterialEntry,
  materialOf,
  repeatedNames,
} from './materialEntry.ts';
export { decimalsOf } from './onBalance.ts';
export { mostMaterials, readMaterials } from './readMaterials.ts';
