import { z } from 'zod';
import { shortlistMost } from './shortlistMost.ts';
import { shortlistStatuses } from './shortlistStatuses.ts';

const entry = z
  .string()
  .min(1)
  .max(400)
  .describe('Write the composition of the entry, for example "Co20Cr20Fe20Mn20Ni20".');

export const shortlistNameSchema = z
  .string()
  .trim()
  .min(1)
  .max(shortlistMost.name)
  .describe(`Write a name of up to ${shortlistMost.name} characters.`);

/** Who writes on a shortlist. */
export const shortlistBySchema = z
  .string()
  .trim()
  .min(1)
  .max(shortlistMost.by)
  .describe('Write the name of who does it; where tokens are asked for, that of the token takes its place.');

/** What somebody does to a shortlist. Entries are named by their canonical composition; none is ever lost. */
export const shortlistActSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('add'),
      entry,
      /** the search that it was kept by */
      search: z.string().min(1).max(64).describe('Write the id of a search.').exactOptional(),
    }),
    z.strictObject({ kind: z.literal('remove'), entry }),
    z.strictObject({ kind: z.literal('restore'), entry }),
    z.strictObject({
      kind: z.literal('note'),
      entry,
      text: z
        .string()
        .trim()
        .min(1)
        .max(shortlistMost.note)
        .describe(`Write a note of up to ${shortlistMost.note} characters.`),
    }),
    z.strictObject({
      kind: z.literal('status'),
      entry,
      status: z.enum(shortlistStatuses).describe(`Write one of: ${shortlistStatuses.join(', ')}.`),
    }),
    z.strictObject({
      kind: z.literal('rename'),
      name: shortlistNameSchema,
    }),
  ])
  .describe(
    'Write what is done, for example {"kind": "note", "entry": "Co50Ni50", "text": "Ask for more."}.',
  );
export type ShortlistAct = z.infer<typeof shortlistActSchema>;

/**
 * A change as it is sent.
 *
 * - `key`: made up by who changes; a change that is sent twice, for the answer was lost, counts once.
 * - `by`: who changes, as they want to be called.
 * - `seen`: sequence number of the shortlist that they had before their eyes. What others changed
 *   after it they did not know: where both set the same thing, both are kept and shown.
 */
export const shortlistChangeSchema = z.strictObject({
  key: z.string().min(1).max(64).describe('Write a text that no other change has.'),
  by: shortlistBySchema,
  seen: z.int().min(0).describe('Write the sequence number of the shortlist that was seen.'),
  act: shortlistActSchema,
});
export type ShortlistChange = z.infer<typeof shortlistChangeSchema>;

/** A change as it was taken: `sequence` from 1, in the order of taking; `at` an instant, UTC. */
export interface TakenChange extends ShortlistChange {
  sequence: number;
  at: string;
}
