import { demixingRatio } from './demixingRatio.ts';
import { demixingTemperature } from './demixingTemperature.ts';
import { hullDistance } from './hullDistance.ts';
import { kappaMargin } from './kappaMargin.ts';
import { kingPhi } from './kingPhi.ts';
import type { LateQuantity } from './lateQuantity.ts';
import { nearestDistance } from './nearestDistance.ts';
import { orderingRatio } from './orderingRatio.ts';
import { orderingTemperature } from './orderingTemperature.ts';

/** Every late quantity, in the order in which pages and exports show them. */
export const lateQuantities: readonly LateQuantity[] = [
  demixingTemperature,
  demixingRatio,
  orderingTemperature,
  orderingRatio,
  hullDistance,
  kingPhi,
  kappaMargin,
  nearestDistance,
];
