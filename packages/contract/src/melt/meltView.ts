import { z } from 'zod';
import { writerSchema } from '../access/writer.ts';
import { amountsSchema } from '../alloy/amounts.ts';
import { phaseClasses } from '../alloy/phaseClasses.ts';
import { attachmentSchema, meltEntrySchema } from './melt.ts';

/** A melt as it is told: what was written down, and what follows from it. */
export const meltViewSchema = z
  .object({
    id: z.string(),
    version: z.number().int().describe('Grows with every change'),
    createdAt: z.string(),
    changedAt: z.string(),
    deletedAt: z.string().nullable(),
    ...meltEntrySchema.shape,
    composition: amountsSchema.describe('at.%, as weighed, after the losses'),
    nominal: amountsSchema.nullable().describe('at.%, the target of the charge sheet; null without one'),
    system: z.string().describe('Symbols, joined by a hyphen'),
    label: z.string().nullable().describe('Phases as in FCC+B2; null: not looked at'),
    phaseClass: z.enum(phaseClasses).nullable(),
    singlePhase: z.boolean().nullable().describe('One disordered fcc or bcc solution'),
    attachments: z.array(attachmentSchema),
    doubts: z
      .array(z.object({ pointer: z.string(), text: z.string() }))
      .describe(
        'What is probably a slip, with the place in the entry; none of it keeps a melt from being recorded',
      ),
  })
  .meta({ id: 'Melt' });
export type MeltView = z.infer<typeof meltViewSchema>;

export const meltsSchema = z.object({ items: z.array(meltViewSchema) });
export type MeltsView = z.infer<typeof meltsSchema>;

export const meltWithHistorySchema = meltViewSchema.extend({
  history: z
    .array(z.object({ version: z.number().int(), at: z.string(), by: writerSchema, entry: meltEntrySchema }))
    .describe('How it stood from then on, the newest first'),
});
export type MeltWithHistory = z.infer<typeof meltWithHistorySchema>;
