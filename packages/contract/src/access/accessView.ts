import { z } from 'zod';
import { roles } from './roles.ts';

/** Who asks, as the service sees it. */
export const accessSchema = z
  .object({
    asked: z.boolean().describe('Whether this service asks for a token'),
    name: z.string().nullable().describe('Of the holder of the token that was sent; null where none was'),
    role: z.enum(roles).nullable().describe('What the holder may do; null where no token was sent'),
  })
  .meta({ id: 'Access', description: 'Who asks, and what they may do.' });
export type AccessView = z.infer<typeof accessSchema>;
