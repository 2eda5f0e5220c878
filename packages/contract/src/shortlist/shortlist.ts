import { z } from 'zod';
import { shortlistStatuses } from './shortlistStatuses.ts';

const said = <Value extends z.ZodType>(value: Value) =>
  z.object({ value, by: z.string(), at: z.string(), sequence: z.int() });

/** Something that two people may set at once: what holds, and what others set without knowing of it. */
function shared<Value extends z.ZodType>(value: Value) {
  return said(value).extend({
    rivals: z
      .array(said(value))
      .describe('Set by others at the same time, until somebody who saw both decides'),
  });
}

export const shortlistEntrySchema = z.object({
  entry: z.string().describe('The canonical composition, at.%'),
  search: z.string().nullable().describe('Id of the search that it came from'),
  addedBy: z.string(),
  addedAt: z.string(),
  status: shared(z.enum(shortlistStatuses)),
  removed: shared(z.boolean()),
  notes: z.array(z.object({ text: z.string(), by: z.string(), at: z.string(), sequence: z.int() })),
});
export type ShortlistEntry = z.infer<typeof shortlistEntrySchema>;

export const shortlistSchema = z
  .object({
    id: z.string(),
    createdAt: z.string(),
    sequence: z.int().describe('Grows by one with each change'),
    name: shared(z.string()),
    entries: z.array(shortlistEntrySchema).describe('In the order of adding; removed ones stay, marked'),
  })
  .meta({ id: 'Shortlist' });
export type Shortlist = z.infer<typeof shortlistSchema>;
