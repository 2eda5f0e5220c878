import { z } from 'zod';
import { problems } from './problem/problems.ts';

/** What of one's own can be brought in; packages/search says what each means. */
export const importKinds = ['prices', 'column', 'pairs', 'materials', 'alloys'] as const;
export type ImportKind = (typeof importKinds)[number];

/** What becomes of a row: something that was not there, in the place of something else, what is there already, or nothing. */
export const fates = ['new', 'changed', 'same', 'refused'] as const;
export type Fate = (typeof fates)[number];

const count = z.int();
const kind = z.enum(importKinds);

export const fateCountsSchema = z.object({ new: count, changed: count, same: count, refused: count });
export type FateCounts = z.infer<typeof fateCountsSchema>;

const faultSchema = z.object({
  code: z.enum(Object.keys(problems) as [keyof typeof problems, ...(keyof typeof problems)[]]),
  pointer: z.string(),
  detail: z.string(),
  remedy: z.string(),
});

/** What would become of each row of a file if it were stored. */
export const importPreviewSchema = z
  .object({
    kind,
    rows: z.array(
      z.object({
        line: count.describe('In the file, from 1'),
        text: z.string().describe('As it stands there; a very long one is cut'),
        fate: z.enum(fates),
        before: z.string().nullable().describe('What is in force in its place; null: nothing'),
        faults: z.array(faultSchema),
      }),
    ),
    counts: fateCountsSchema,
    faults: z.array(faultSchema).describe('Of the file as a whole'),
    lost: z
      .array(z.string())
      .describe(
        'What is in force and would not be any more: a list or a column takes the place of a whole one',
      ),
    storable: z.boolean(),
  })
  .meta({ id: 'ImportPreview', description: 'The fate of every row; nothing is stored.' });
export type ImportPreview = z.infer<typeof importPreviewSchema>;

/** Rows that were stored together, under a number that is never given again. */
export const importVersionSchema = z
  .object({
    number: count,
    kind,
    name: z.string(),
    at: z.string().describe('UTC, ISO 8601'),
    rows: count,
    counts: fateCountsSchema.describe('What became of its rows when it was stored'),
    inForce: z.boolean().describe('Whether any of its rows is what holds now'),
    withdrawnAt: z
      .string()
      .nullable()
      .describe('UTC, ISO 8601; null: not withdrawn, though newer rows may hold'),
    searches: count.describe('How many searches were planned with it'),
  })
  .meta({ id: 'ImportVersion' });
export type ImportVersion = z.infer<typeof importVersionSchema>;

/** Which searches used which data. */
export const dataVersionsSchema = z
  .object({
    current: z.string().describe('Of a search that were planned now and read no column of your own'),
    items: z.array(
      z.object({
        dataVersion: z.string(),
        current: z.boolean().describe('Whether the same search planned now would have it'),
        firstUsed: z.string().nullable().describe('UTC, ISO 8601; null where no search has used it yet'),
        searches: z.array(z.object({ id: z.string(), name: z.string(), createdAt: z.string() })),
        with: z
          .array(z.object({ number: count, kind, name: z.string() }))
          .describe('Imports that are in it; none: the data that the program comes with'),
      }),
    ),
  })
  .meta({ id: 'DataVersions' });
export type DataVersions = z.infer<typeof dataVersionsSchema>;
