import { z } from 'zod';
import { longestMeltLine, longestMeltNotes, meltMost, mostWeighed } from './meltBounds.ts';
import { coolings, meltProcesses, observablePhases, observationMethods } from './meltWords.ts';

const line = (what: string) =>
  z.string().max(longestMeltLine).describe(`Write in at most ${longestMeltLine} characters ${what}.`);
const measured = (what: string, greatest: number) =>
  z.number().gt(0).max(greatest).nullable().describe(`Write ${what}, or null where it was not measured.`);

const weighedSchema = z
  .strictObject({
    material: line('the material as the charge sheet names it, or a name that begins with a symbol'),
    mass: z.number().gt(0).max(meltMost.mass).describe('Write what the balance showed, in grams.'),
    contains: z
      .union([z.string(), z.record(z.string(), z.number())])
      .nullable()
      .describe(
        'Write a master alloy such as "Fe34Nb66", where no charge sheet says what is in it, or another lot was weighed.',
      )
      .exactOptional(),
    amounts: z
      .enum(['at.%', 'wt.%'])
      .nullable()
      .describe('Write "at.%" or "wt.%": what the amounts of a master alloy are.')
      .exactOptional(),
    purity: z
      .number()
      .nullable()
      .describe('Write wt.% of metal; left out: as the charge sheet has it, else 100.')
      .exactOptional(),
  })
  .meta({ id: 'Weighed' });

const annealSchema = z
  .strictObject({
    temperature: z.number().gt(0).max(meltMost.temperature).describe('Write kelvin.'),
    hours: z.number().gt(0).max(meltMost.hours).describe('Write hours.'),
    cooling: z.enum(coolings).describe(`Write one of ${coolings.join(', ')}.`),
  })
  .meta({ id: 'Anneal' });

const annealedSchema = annealSchema
  .nullable()
  .describe(
    'Write an anneal, such as {"temperature": 1473, "hours": 24, "cooling": "water quench"}, or null for none.',
  );

/**
 * A melt as a person writes it down: what was weighed, how it was melted and annealed, what was seen.
 * Grams, kelvin, HV, g/cm3; null where something was not measured or looked at.
 */
export const meltEntrySchema = z
  .strictObject({
    name: line('what the melt is called'),
    date: z.iso.date().describe('Write the day of the melt as 2026-11-25.'),
    charge: line('the number of its charge sheet, such as C-0007')
      .nullable()
      .describe(`Write the number of its charge sheet, such as "C-0007", or null where it has none.`),
    weighed: z
      .array(weighedSchema)
      .min(1)
      .max(mostWeighed)
      .describe('Write each material with its mass, such as [{"material": "Ni", "mass": 10.428}].'),
    loss: z
      .record(z.string(), z.number())
      .describe('Write by symbol the wt.% that evaporated; left out: what the charge sheet expects.')
      .exactOptional(),
    ingot: measured('the mass of the ingot in grams', meltMost.ingot),
    process: z.enum(meltProcesses).describe(`Write one of ${meltProcesses.join(', ')}.`),
    anneal: annealedSchema,
    phases: z
      .array(z.enum(observablePhases).describe(`Write one of ${observablePhases.join(', ')}.`))
      .min(1)
      .max(observablePhases.length)
      .nullable()
      .describe('Write the phases that were observed, or null where nobody has looked yet.'),
    methods: z
      .array(z.enum(observationMethods).describe(`Write one of ${observationMethods.join(', ')}.`))
      .max(observationMethods.length)
      .describe(
        'Write how the phases were observed as a list, such as ["X-ray diffraction"]; [] for not yet.',
      ),
    hardness: measured('the hardness in HV', meltMost.hardness),
    density: measured('the density in g/cm3', meltMost.density),
    notes: z.string().max(longestMeltNotes).describe(`Write at most ${longestMeltNotes} characters.`),
  })
  .describe('Write a melt, such as {"name": "First trial", "date": "2026-11-25", ...}.');
export type MeltEntry = z.infer<typeof meltEntrySchema>;

const { shape } = meltEntrySchema;

/**
 * The same when it is first written down: what is left out was not measured, not done, or not looked at
 * yet. Who changes a melt states all of it, for what a change left out would be lost.
 */
export const meltRecordSchema = meltEntrySchema.extend({
  name: shape.name.default(''),
  charge: shape.charge.default(null),
  ingot: shape.ingot.default(null),
  anneal: shape.anneal.default(null),
  phases: shape.phases.default(null),
  methods: shape.methods.default([]),
  hardness: shape.hardness.default(null),
  density: shape.density.default(null),
  notes: shape.notes.default(''),
});

/** A file that is attached to a melt, as it is told. */
export const attachmentSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    type: z.string().describe('By what is in it'),
    size: z.number().int().describe('bytes'),
    addedAt: z.string(),
  })
  .meta({ id: 'Attachment' });
export type Attachment = z.infer<typeof attachmentSchema>;
