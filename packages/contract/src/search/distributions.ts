import { z } from 'zod';

const share = z.number().min(0).max(1);

/**
 * How quantities are distributed over the grid points of a search, from a sample of them. Of a
 * grid that has no more points than the sample these are all points: `error` is 0 then.
 */
export const distributionsSchema = z
  .object({
    systems: z.number().int(),
    points: z.number().int().describe('Points of the grid, exactly'),
    sample: z.number().int().describe('Points drawn, each point of the grid being equally likely'),
    seed: z.number().int(),
    compositions: z.array(z.record(z.string(), z.number())).exactOptional(),
    quantities: z.array(
      z.object({
        quantity: z.string(),
        values: z.array(z.number().nullable()).describe('In the order of the sample; null: no value'),
      }),
    ),
    limits: z
      .array(
        z.object({
          quantity: z.string(),
          share: share.describe('Of the sample that meets this limit'),
          shareWithout: share.describe('Of the sample that meets all other limits'),
        }),
      )
      .describe('In the order of the specification'),
    passed: share.describe('Of the sample that meets all limits'),
    error: share.describe('Half-width of the 95 % interval of `passed`'),
  })
  .meta({ id: 'Distributions' });
export type Distributions = z.infer<typeof distributionsSchema>;

const MOST_DRAWN = 20_000;
const anyObject: z.ZodType<object> = z.looseObject({});

/**
 * The form of a question for distributions. The specification inside has a check of its own, so
 * that here it is any object; for the documents it may be given its form.
 */
export function distributionsRequest(specification: z.ZodType<object> = anyObject) {
  return z
    .strictObject({
      specification: specification.describe('Write a search specification; rank may be left out.'),
      quantities: z
        .array(z.string().max(64))
        .max(64)
        .describe('Write ids of quantities as a list; left out, those that are limited or ranked.')
        .exactOptional(),
      sample: z
        .int()
        .min(1)
        .max(MOST_DRAWN)
        .describe(`Write how many points to draw, from 1 to ${MOST_DRAWN}; 2000 if left out.`)
        .exactOptional(),
      seed: z
        .int()
        .min(0)
        .describe('Write a whole number from 0: the same one draws the same points; 1 if left out.')
        .exactOptional(),
      compositions: z
        .boolean()
        .describe('Write true to have the compositions of the points, too.')
        .exactOptional(),
    })
    .describe('Write an object such as {"specification": {...}, "sample": 2000}.');
}
