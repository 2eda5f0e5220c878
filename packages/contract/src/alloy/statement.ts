import { z } from 'zod';

/** What every statement of a model ends with: the same in words, and how far to trust it. */
export const statement = {
  words: z.string().describe('The same as a sentence'),
  trust: z.string().describe('How far to trust it; belongs beside every number'),
};
