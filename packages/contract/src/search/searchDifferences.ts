import { z } from 'zod';

const text = z.string().nullable();

/** What two searches asked, or were computed from, differently. */
export const searchDifferencesSchema = z
  .object({
    search: z.string().describe('The id of the search that is looked at'),
    other: z.string().describe('The id of the one that it is compared with'),
    changes: z
      .array(
        z.object({
          what: z.string(),
          before: text.describe('What the other search has there; null: nothing'),
          after: text.describe('What this search has there; null: nothing'),
        }),
      )
      .describe('First of the specification, then data version, engine version and prices'),
  })
  .meta({ id: 'SearchDifferences' });
export type SearchDifferences = z.infer<typeof searchDifferencesSchema>;
export type Difference = SearchDifferences['changes'][number];
