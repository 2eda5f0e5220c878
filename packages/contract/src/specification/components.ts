import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';

const MOST_COMPONENTS = 10;

const howMany = z
  .int()
  .min(1)
  .max(MOST_COMPONENTS)
  .describe(`Write a whole number from 1 to ${MOST_COMPONENTS}.`);

/** The section `components`: how many elements an alloy has, one number or from min to max. */
export const componentsSchema = z
  .union([
    howMany,
    z.strictObject({ min: howMany, max: howMany }).check((payload) => {
      const { min, max } = payload.value;
      if (min > max) report(payload, 'specification/bounds-crossed', { what: 'components', min, max });
    }),
  ])
  .describe(`Write a number of elements from 1 to ${MOST_COMPONENTS}, or two such as {"min": 5, "max": 6}.`);

export type ComponentsRequest = z.infer<typeof componentsSchema>;

/** The same as smallest and largest number. */
export function componentRange(components: ComponentsRequest): { min: number; max: number } {
  return typeof components === 'number' ? { min: components, max: components } : components;
}
