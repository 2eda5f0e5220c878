import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';
import { partsOfBounds } from './partsOfBounds.ts';
import { steps } from './steps.ts';

const step = z
  .number()
  .check((payload) => {
    if ((steps as readonly number[]).includes(payload.value)) return;
    report(payload, 'specification/step', { found: payload.value, steps: steps.join(', ') });
  })
  .describe(`Write one of ${steps.join(', ')} (at.%).`)
  .meta({ enum: [...steps] });

const bound = z
  .number()
  .gt(0)
  .max(100)
  .describe('Write an amount in at.% above 0 and at most 100: it holds for an element that is present.');

const bounds = z
  .strictObject({ min: bound.exactOptional(), max: bound.exactOptional() })
  .check((payload) => {
    const { min, max } = payload.value;
    if (min === undefined || max === undefined || min <= max) return;
    report(payload, 'specification/bounds-crossed', { what: 'the bounds', min, max });
  })
  .describe('Write min or max or both in at.%, for example {"max": 15}.');

/** The section `fractions`: 'equimolar', or the step of the grid and bounds of an element that is present. */
export function fractionsSchema(elements: readonly string[]) {
  const each = Object.fromEntries(elements.map((symbol) => [symbol, bounds.exactOptional()]));
  const grid = z
    .strictObject({
      step,
      min: bound.exactOptional(),
      max: bound.exactOptional(),
      each: z
        .strictObject(each)
        .describe('Write bounds by symbol, for example {"Al": {"max": 15}}.')
        .exactOptional(),
    })
    .check((payload) => reportEmptyBounds(payload));
  return z
    .union([z.literal('equimolar'), grid])
    .describe(
      'Write "equimolar", or the step of the grid in at.%, for example {"step": 5, "min": 5, "max": 35}.',
    );
}

export type FractionsRequest = z.infer<ReturnType<typeof fractionsSchema>>;
type GridRequest = Exclude<FractionsRequest, 'equimolar'>;

function reportEmptyBounds(payload: z.core.ParsePayload<GridRequest>): void {
  const { step, min = step, max = 100 } = payload.value;
  if (min > max) {
    report(payload, 'specification/bounds-crossed', { what: 'fractions', min, max });
  } else if (partsOfBounds({ step, min, max }) === null) {
    report(payload, 'specification/bounds-between-steps', { what: 'fractions', min, max, step });
  }
}
