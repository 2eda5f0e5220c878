import { type Fault, fault } from '@tiegel/contract/terms';
import type { Composition } from '@tiegel/screening';
import { mostWeighed } from './weighingCorners.ts';

/**
 * What keeps a batch from being worked out by `weighingError`, for whoever asked: more than 12 elements
 * (/composition), a batch of not more than one step of the balance (/resolution). Empty where all is well.
 *
 * @param mass of the batch, g
 * @param resolution one step of the balance, g, above 0
 */
export function weighingFaults(composition: Composition, mass: number, resolution: number): Fault[] {
  const count = Object.keys(composition).length;
  return [
    ...(count > mostWeighed
      ? [fault('weighing/too-many-elements', { count, limit: mostWeighed }, '/composition')]
      : []),
    ...(mass <= resolution ? [fault('weighing/resolution', { mass, resolution }, '/resolution')] : []),
  ];
}
