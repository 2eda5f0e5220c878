import { amountKinds, type ChargeRequest, chargeRequestOf, mostMaterials } from '@tiegel/charge';
import type { Searches } from '@tiegel/search';
import { z } from 'zod';
import { alloyOfBody, alloySchema } from '../alloys/alloySchema.ts';

const number = z.number();
const percent = z.record(z.string(), number);

const materialSchema = z
  .strictObject({
    name: z.string().describe('Write a name that begins with the symbol of an element in it: "Mn flakes".'),
    contains: z
      .union([z.string(), z.record(z.string(), number)])
      .nullable()
      .describe('Write a master alloy such as "Fe34Nb66"; left out: the element that the name begins with.')
      .exactOptional(),
    amounts: z
      .enum(amountKinds)
      .nullable()
      .describe('Write "at.%" or "wt.%": what the amounts of a master alloy are.')
      .exactOptional(),
    purity: number.nullable().describe('Write wt.% of metal; left out: 100.').exactOptional(),
    price: number
      .nullable()
      .describe('Write the price per kg as weighed; left out: unknown.')
      .exactOptional(),
    meltingTemperature: number
      .nullable()
      .describe('Write kelvin; left out: the mean of its elements.')
      .exactOptional(),
  })
  .meta({ id: 'Material' });

/** What a charge is asked for with, by key. */
export const chargeFields = {
  composition: alloySchema,
  mass: number.describe('Write the batch mass in grams: of everything that is weighed.'),
  resolution: number.describe('Write the step of the balance in grams, such as 0.001.'),
  purity: percent
    .describe('Write wt.% by symbol, such as {"Mn": 99.7}, for elements that are charged pure.')
    .exactOptional(),
  loss: percent
    .describe('Write by symbol the wt.% of its mass that evaporates and is made up for, such as {"Mn": 1.5}.')
    .exactOptional(),
  materials: z
    .union([z.array(materialSchema).min(1).max(mostMaterials), z.literal('in force')])
    .describe(
      'Write all there is to charge from as a list, or "in force" for the materials that were brought in and, of elements that none of them is, pure ones; left out, every element pure at the price in force.',
    )
    .exactOptional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .nullable()
    .describe('Write the currency of the materials\' prices, such as "EUR".')
    .exactOptional(),
};

export const chargeBodySchema = z
  .strictObject(chargeFields)
  .describe('Write an object such as {"composition": "CoCrFeMnNi", "mass": 50, "resolution": 0.001}.');

/**
 * The charge that a body asks for, with every default and the pair values in force.
 * @throws ProblemError with every fault of the form, of the alloy, of purities and of materials
 */
export function readCharge(
  schema: z.ZodType,
  body: unknown,
  { prices, imports }: Pick<Searches, 'prices' | 'imports'>,
): ChargeRequest {
  const composition = alloyOfBody(schema, body);
  const { materials, ...asked } = body as z.infer<typeof chargeBodySchema>;
  if (materials === 'in force') {
    const entry = { ...asked, composition, ...imports.materialsFor(composition) };
    return { ...chargeRequestOf(entry, prices()), pairs: imports.pairs() };
  }
  const entry = { ...asked, composition, ...(materials === undefined ? {} : { materials }) };
  return { ...chargeRequestOf(entry, prices()), pairs: imports.pairs() };
}
