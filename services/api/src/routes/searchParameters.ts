import { z } from 'zod';

/** The path of everything that belongs to one search. */
export const searchParameters = z.object({
  id: z.string().max(64).describe('The id that starting the search answered.'),
});
