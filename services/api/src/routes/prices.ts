import { demoPrices, readPriceList } from '@tiegel/elements';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { withCsvBody } from './withCsvBody.ts';

const path = '/prices';
const tags = ['data'];
const priceListSchema = z
  .object({
    currency: z.string(),
    date: z.string().describe('ISO 8601 date of the newest entry'),
    invented: z.boolean().describe('The demonstration list that comes with the project'),
    prices: z.record(
      z.string(),
      z.object({ pricePerKilogram: z.number(), date: z.string(), source: z.string() }),
    ),
  })
  .meta({ id: 'PriceList', description: 'Prices of the pure elements, by symbol.' });

/** GET, PUT and DELETE /prices: the list in force. Searches keep the list that they were planned with. */
export function priceRoutes(app: Server, { searches }: Parts): void {
  app.get(
    path,
    {
      schema: {
        summary: 'The price list in force',
        tags,
        response: { 200: priceListSchema.nullable(), ...problemAnswers() },
      },
    },
    () => searches.prices(),
  );

  withCsvBody(app, (csv) => {
    csv.put(
      path,
      {
        schema: {
          summary: 'Puts a list of your own in force',
          description: 'CSV with the head symbol,pricePerKilogram,currency,date,source; one currency.',
          tags,
          consumes: ['text/csv'],
          body: z.string().describe('Write a price list as CSV.'),
          response: { 200: priceListSchema, ...problemAnswers(413, 415) },
        },
      },
      (request) => {
        const list = readPriceList(request.body);
        searches.imports.replacePrices(list);
        return list;
      },
    );
  });

  app.delete(
    path,
    {
      schema: {
        summary:
          'Takes every list of your own out of force: the demonstration list, which is invented, holds again',
        tags,
        response: { 200: priceListSchema, ...problemAnswers() },
      },
    },
    () => {
      searches.imports.removePrices();
      return searches.prices() ?? demoPrices;
    },
  );
}
