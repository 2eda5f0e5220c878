import { type ChargeSheet, chargeNumber, meltOf, numberOfCharge } from '@tiegel/charge';
import { type MeltEntry, meltEntrySchema, problem } from '@tiegel/contract';
import { phaseClassOf } from '@tiegel/elements/publishedAlloys';
import type { ChargeSheetTable, MeltTable, StoredMelt } from '@tiegel/store';
import { z } from 'zod';

const shares = z.record(z.string(), z.number());

/** An attachment as it is told. */
export const attachmentSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    type: z.string().describe('By what is in it'),
    size: z.number().int().describe('bytes'),
    addedAt: z.string(),
  })
  .meta({ id: 'Attachment' });

/** A melt as it is told: what was written down, and what follows from it. */
export const meltViewSchema = z
  .object({
    id: z.string(),
    version: z.number().int().describe('Grows with every change'),
    createdAt: z.string(),
    changedAt: z.string(),
    deletedAt: z.string().nullable(),
    ...meltEntrySchema.shape,
    composition: shares.describe('at.%, as weighed, after the losses'),
    nominal: shares.nullable().describe('at.%, the target of the charge sheet; null without one'),
    system: z.string().describe('Symbols, joined by a hyphen'),
    label: z.string().nullable().describe('Phases as in FCC+B2; null: not looked at'),
    phaseClass: z.enum(['fcc', 'bcc', 'both', 'other']).nullable(),
    singlePhase: z.boolean().nullable().describe('One disordered fcc or bcc solution'),
    attachments: z.array(attachmentSchema),
  })
  .meta({ id: 'Melt' });
export type MeltView = z.input<typeof meltViewSchema>;

export interface MeltParts {
  melts: MeltTable;
  chargeSheets: ChargeSheetTable;
}

/** The melt with what follows from it: as-weighed composition, system, class of its phases. */
export function meltView(stored: StoredMelt, { melts, chargeSheets }: MeltParts): MeltView {
  const { entry: kept, ...standing } = stored;
  const entry = kept as MeltEntry;
  const { composition, nominal, system, label } = meltOf(entry, sheetOf(entry.charge, chargeSheets));
  const phaseClass = label === null ? null : phaseClassOf(label);
  return {
    ...standing,
    ...entry,
    ...{ composition, nominal, system, label, phaseClass },
    singlePhase: phaseClass === null ? null : phaseClass === 'fcc' || phaseClass === 'bcc',
    attachments: melts.attachments(stored.id),
  };
}

/**
 * The entry as it is kept, once all of it is possible; the number of its charge sheet in its one spelling.
 * @throws ProblemError of the charge sheet, and as meltOf does
 */
export function checkedEntry(entry: MeltEntry, chargeSheets: ChargeSheetTable): MeltEntry {
  meltOf(entry, sheetOf(entry.charge, chargeSheets));
  const number = entry.charge === null ? null : numberOfCharge(entry.charge);
  return { ...entry, name: entry.name.trim(), charge: number === null ? null : chargeNumber(number) };
}

function sheetOf(charge: string | null, chargeSheets: ChargeSheetTable): ChargeSheet | null {
  if (charge === null) return null;
  const number = numberOfCharge(charge);
  const stored = number === null ? null : chargeSheets.find(number);
  if (stored === null) throw problem('charge/not-found', { number: charge.slice(0, 20) }, '/charge');
  return stored.sheet as ChargeSheet;
}

/** @throws ProblemError melt/not-found */
export function foundMelt(id: string, melts: MeltTable): StoredMelt {
  const stored = melts.find(id);
  if (stored === null) throw problem('melt/not-found', { id: id.slice(0, 20) });
  return stored;
}
