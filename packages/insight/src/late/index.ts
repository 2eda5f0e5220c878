/** What a search needs of insight: quantities that only kept candidates get. */
export { lateQuantities } from './lateQuantities.ts';
export type { LateQuantity } from './lateQuantity.ts';
export { lateQuantityById, lateValuesOf } from './lateValuesOf.ts';
