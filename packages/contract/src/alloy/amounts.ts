import { z } from 'zod';

/** By the symbol of each element; at.% where nothing else is said. */
export const amountsSchema = z.record(z.string(), z.number());
export type Amounts = z.infer<typeof amountsSchema>;

/** By the id of each quantity, or the name of each condition, in its unit; null where there is no value. */
export const valuesSchema = z.record(z.string(), z.number().nullable());
export type Values = z.infer<typeof valuesSchema>;
