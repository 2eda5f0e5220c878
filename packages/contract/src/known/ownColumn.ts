import { z } from 'zod';
import { amountsSchema } from '../alloy/amounts.ts';
import { mixings } from './mixings.ts';

export const ownColumnSchema = z
  .object({
    id: z.string().describe('Its name in limits, rankings, expressions and exports'),
    name: z.string(),
    unit: z.string(),
    mixing: z.enum(mixings).describe('Whether it is averaged by atoms, by mass or by volume'),
    values: amountsSchema.describe('By symbol'),
  })
  .meta({ id: 'OwnColumn', description: 'A column of element data of your own.' });
export type OwnColumnView = z.infer<typeof ownColumnSchema>;
