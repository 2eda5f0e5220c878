import { z } from 'zod';

/** Who wrote something down, as the service knows them. */
export const writerSchema = z
  .string()
  .nullable()
  .describe('Whose token it was written with; null: nobody was asked for one');
