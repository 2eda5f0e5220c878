import { z } from 'zod';
import { pairAffinitySchema } from './affinity.ts';
import { amountsSchema, valuesSchema } from './amounts.ts';
import { dossierSchema } from './dossier.ts';
import { ownPhaseSchema } from './recalibration.ts';

/** Everything that is said of one alloy, as numbers and as paragraphs for a person. */
export const explanationSchema = z
  .object({
    composition: amountsSchema,
    conditions: valuesSchema.describe('Every one with its value; null: none'),
    dataVersion: z.string().describe('Of the data and prices in force'),
    quantities: valuesSchema,
    ...dossierSchema.shape,
    own: ownPhaseSchema
      .nullable()
      .describe('The phase estimate recalibrated on your own melts, beside the published one'),
    affinity: pairAffinitySchema.nullable(),
    paragraphs: z
      .array(
        z.object({
          subject: z.string(),
          heading: z.string(),
          text: z.string(),
          trust: z.string().nullable(),
          sources: z.array(z.string()),
        }),
      )
      .describe('The same for a person, in the order of reading'),
  })
  .meta({ id: 'Explanation' });
export type Explanation = z.infer<typeof explanationSchema>;
