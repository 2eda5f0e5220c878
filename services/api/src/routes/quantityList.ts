import { mostQuantities } from '@tiegel/search';
import { z } from 'zod';

const longest = 1000;

/** Ids of quantities with commas between, in the address of a request: see quantitiesIn. */
export const quantityList = z
  .string()
  .max(longest)
  .regex(new RegExp(`^\\w+(?:,\\w+){0,${mostQuantities - 1}}$`))
  .describe(
    `Write at most ${mostQuantities} ids of quantities with commas between, for example density,omega.`,
  );

export function quantitiesIn(list: string | undefined): string[] {
  return list?.split(',') ?? [];
}
