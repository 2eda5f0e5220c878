import { ownColumnSchema } from '@tiegel/contract';
import { readOwnColumn } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { withCsvBody } from './withCsvBody.ts';

const path = '/columns';
const tags = ['data'];

/** GET, PUT and DELETE /columns: element data of one's own. Searches keep the columns that they were planned with. */
export function columnRoutes(app: Server, { searches }: Parts): void {
  app.get(
    path,
    {
      schema: {
        summary: 'The element columns of your own that are in force',
        tags,
        response: { 200: z.array(ownColumnSchema), ...problemAnswers() },
      },
    },
    () => searches.columns(),
  );

  withCsvBody(app, (csv) => {
    csv.put(
      path,
      {
        schema: {
          summary: 'Puts an element column of your own in force',
          description:
            'CSV with the head symbol,value,name,unit,mixing; name, unit and mixing (mole, mass or volume) in the first row.',
          tags,
          consumes: ['text/csv'],
          body: z.string().describe('Write a column as CSV.'),
          response: { 200: ownColumnSchema, ...problemAnswers(413, 415) },
        },
      },
      (request) => {
        const column = readOwnColumn(request.body);
        searches.imports.enterColumn(column);
        return column;
      },
    );
  });

  app.delete(
    `${path}/:id`,
    {
      schema: {
        summary: 'Takes an element column out of force; answers with those that stay',
        tags,
        params: z.object({ id: z.string().max(64).describe('Id of the column') }),
        response: { 200: z.array(ownColumnSchema), ...problemAnswers(404) },
      },
    },
    (request) => {
      searches.imports.removeColumn(request.params.id);
      return searches.columns();
    },
  );
}
