import { z } from 'zod';
import { candidatePageSchema, candidateSchema } from './search.ts';

const count = z.number().int();

const publishedSchema = z
  .object({
    alloys: count.describe('Published compositions of exactly these elements'),
    references: count.describe('Publications, added up over the compositions'),
    phases: z.array(z.object({ phases: z.string().nullable(), alloys: count })),
  })
  .nullable()
  .describe('null: none in the table of published alloys, which is a part of what is published');

/** A page of the systems of kept candidates, each with its best, and what is known of each and of them all. */
export const systemsSchema = z
  .object({
    items: z.array(
      z.object({
        system: z.string().describe('Symbols, alphabetical, with spaces between'),
        kept: count,
        best: candidateSchema,
        published: publishedSchema,
        melts: count.describe('Melts recorded here of exactly these elements'),
        own: count.describe('Alloys that were brought in of exactly these elements'),
      }),
    ),
    next: count.nullable().describe('`at` of the following page; null at the end'),
    explored: z.object({
      systems: count.describe('Systems of the search'),
      published: count.describe('Of the pool, in its numbers of elements, with published alloys'),
      kept: count.describe('With kept candidates that meet the filters'),
      keptPublished: count.describe('Of these, those with published alloys'),
      keptExplored: count.describe(
        'Of these, those with published alloys, alloys that were brought in, or melts recorded here',
      ),
      publishedNotKept: z
        .array(z.object({ system: z.string(), published: publishedSchema }))
        .describe('With published alloys, but without a kept candidate that meets the filters'),
      trust: z.string(),
    }),
    meeting: count,
    among: candidatePageSchema.shape.among,
  })
  .meta({ id: 'Systems' });
export type SystemsPage = z.infer<typeof systemsSchema>;
/** A system with its best kept candidate. */
export type SystemView = SystemsPage['items'][number];
