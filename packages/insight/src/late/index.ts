/** What a search needs of insight: quantities that only kept candidates get, and whether they meet their limits. */
export { meetsLimit } from '../meetsLimit.ts';
export { lateQuantities } from './lateQuantities.ts';
export type { LateQuantity } from './lateQuantity.ts';
export { lateQuantityById, lateValuesOf } from './lateValuesOf.ts';
