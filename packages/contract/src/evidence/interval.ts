import { z } from 'zod';

/** 95 %, from the lower to the upper end. */
export const intervalSchema = z.tuple([z.number(), z.number()]);
