import { z } from 'zod';
import { amountsSchema } from '../alloy/amounts.ts';

/** A raw material that a charge can be made of. */
const materialSchema = z.object({
  name: z.string(),
  contains: amountsSchema.describe('wt.% of the metal in it'),
  purity: z.number().describe('wt.% that is this metal'),
  price: z.number().nullable().describe('Per kg of the material as it is weighed; null: unknown'),
  currency: z.string().nullable(),
  meltingTemperature: z.number().nullable().describe('K; null: the mean of its elements stands for it'),
  own: z.boolean().describe('Brought in; else a pure element at the price of the list in force'),
  import: z.int().nullable().describe('Number of the import'),
});
export type MaterialView = z.infer<typeof materialSchema>;

export const materialsSchema = z.object({ items: z.array(materialSchema) }).meta({ id: 'RawMaterials' });
