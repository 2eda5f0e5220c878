import type { CandidateQuery } from '@tiegel/contract';
import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import { symbolFault } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { z } from 'zod';
import type { MoreSelection } from './moreSelection.ts';
import { numberInAddress } from './numberInAddress.ts';

const greatestPage = 1000;
const usualPage = 100;
const ids = quantities.map(({ id }) => id);

const bound = (edge: string, { name, unit }: { name: string; unit: string }) =>
  numberInAddress(z.number())
    .optional()
    .describe(
      `Write a number: the ${edge} of ${name.toLowerCase()}${unit === '' ? '' : ` (${unit})`}, inclusive.`,
    );
const ranges = Object.fromEntries(
  quantities.flatMap((quantity) => [
    [`min.${quantity.id}`, bound('least value', quantity)],
    [`max.${quantity.id}`, bound('greatest value', quantity)],
  ]),
);
export const elementList = (what: string) =>
  z.string().max(1000).optional().describe(`Write symbols with commas between: ${what}, for example Fe,Ni.`);

/** Which kept candidates, in which order: shared by the pages of a result and its exports. */
export const selectionSchema = z.strictObject({
  ...ranges,
  front: z.enum(['yes']).optional().describe('Write yes for members of the Pareto front only.'),
  has: elementList('elements that must be there'),
  without: elementList('elements that must not'),
  order: z
    .enum(['rank', ...ids])
    .optional()
    .describe(
      `Write rank (the default) or the id of a quantity: ${ids.join(', ')}; or of one that the search alone has.`,
    ),
  direction: z.enum(['asc', 'desc']).optional().describe('Write asc (the default) or desc.'),
});

/** Which systems of the kept candidates are asked for, in the order of their best. */
export const systemsSelectionSchema = selectionSchema.omit({ order: true, direction: true }).extend({
  explored: z
    .enum(['yes', 'no'])
    .optional()
    .describe('Write yes for systems with published or own alloys or melts only, no for those without.'),
});

/** The same with the part of it that makes a page. */
export const pageSchema = selectionSchema.extend({
  limit: numberInAddress(z.int().min(1).max(greatestPage))
    .optional()
    .describe(`Write a whole number of rows from 1 to ${greatestPage}; ${usualPage} if left out.`),
  after: z.string().max(1000).optional().describe('Write the key `next` of the page before.'),
  at: numberInAddress(z.int().min(0))
    .optional()
    .describe('Write the number of the first row, from 0, in the order asked for.'),
});

/**
 * A checked query string as the question that it asks, with what was taken out of it before (moreOf). Throws with every fault:
 * element/unknown, element/no-data, specification/bounds-crossed.
 */
export function candidateQuery(
  asked: z.infer<typeof pageSchema> | z.infer<typeof selectionSchema>,
  more: MoreSelection,
): CandidateQuery {
  const { front, has, without, order = 'rank', direction = 'asc' } = asked;
  const { limit = usualPage, after, at } = asked as z.infer<typeof pageSchema>;
  const query: CandidateQuery = {
    ranges: [...rangesIn(asked as Record<string, unknown>), ...more.ranges],
    ...(front === undefined ? {} : { front: true as const }),
    has: symbolsIn(has),
    without: symbolsIn(without),
    order: more.order ?? order,
    direction,
    limit,
    ...(after === undefined ? {} : { after }),
    ...(at === undefined ? {} : { at }),
  };
  const faults = faultsIn(query);
  if (faults.length > 0) throw new ProblemError(faults);
  return query;
}

function rangesIn(asked: Record<string, unknown>): CandidateQuery['ranges'] {
  return ids.flatMap((quantity) => {
    const min = asked[`min.${quantity}`] as number | undefined;
    const max = asked[`max.${quantity}`] as number | undefined;
    if (min === undefined && max === undefined) return [];
    return [{ quantity, ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) }];
  });
}

/** The symbols of a list with commas between. */
export function symbolsIn(list: string | undefined): string[] {
  return (list ?? '')
    .split(',')
    .map((symbol) => symbol.trim())
    .filter((symbol) => symbol !== '');
}

function faultsIn({ ranges, has, without }: CandidateQuery): Fault[] {
  return [
    ...ranges.flatMap(({ quantity, min, max }) =>
      min !== undefined && max !== undefined && min > max
        ? [fault('specification/bounds-crossed', { what: quantity, min, max }, `/min.${quantity}`)]
        : [],
    ),
    ...has.flatMap((symbol) => symbolFault(symbol, '/has') ?? []),
    ...without.flatMap((symbol) => symbolFault(symbol, '/without') ?? []),
  ];
}
