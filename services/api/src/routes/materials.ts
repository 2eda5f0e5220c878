import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const answerSchema = z
  .object({
    items: z.array(
      z.object({
        name: z.string(),
        contains: z.record(z.string(), z.number()).describe('wt.% of the metal in it'),
        purity: z.number().describe('wt.% that is this metal'),
        price: z.number().nullable().describe('Per kg of the material as it is weighed; null: unknown'),
        currency: z.string().nullable(),
        meltingTemperature: z.number().nullable().describe('K; null: the mean of its elements stands for it'),
        own: z.boolean().describe('Brought in; else a pure element at the price of the list in force'),
        import: z.int().nullable().describe('Number of the import'),
      }),
    ),
  })
  .meta({ id: 'RawMaterials' });

/** GET /materials: raw materials that a charge can be made of, own ones first. */
export function materialRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/materials',
    {
      schema: {
        summary: 'Raw materials in force: those that were brought in, then every element pure',
        tags: ['data'],
        response: { 200: answerSchema, ...problemAnswers() },
      },
    },
    () => ({
      items: searches.imports
        .materials()
        .map((one) => ({ ...one, contains: { ...one.contains }, own: one.import !== null })),
    }),
  );
}
