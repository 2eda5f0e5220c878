import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';
import type { RankEntry } from './specification.ts';

const MOST_ENTRIES = 16;

const anchor = z.number().describe("Write a number in the quantity's unit.");
const positive = (what: string, most: number) =>
  z.number().gt(0).max(most).describe(`Write ${what} above 0 and at most ${most}; it is 1 if left out.`);

const preference = z
  .union([z.literal('high'), z.literal('low'), z.strictObject({ target: anchor })])
  .describe('Write "high", "low" or a target such as {"target": 8}.');

/**
 * The section `rank`. One entry orders by its value. Several are combined by desirability
 * (Derringer & Suich, J. Qual. Technol. 12 (1980) 214), which needs the anchors between which a
 * value becomes desirable: from and to, or, around a target, within.
 */
export function rankSchema(quantity: z.ZodType<string>) {
  const entry = z
    .strictObject({
      quantity,
      prefer: preference,
      from: anchor.exactOptional(),
      to: anchor.exactOptional(),
      within: z.number().gt(0).describe('Write a distance from the target, above 0.').exactOptional(),
      weight: positive('a weight', 1000).exactOptional(),
      shape: positive('an exponent', 100).exactOptional(),
    })
    .describe(
      'Write a quantity and what is preferred, for example {"quantity": "density", "prefer": "low"}.',
    );
  return z
    .array(entry)
    .min(1)
    .max(MOST_ENTRIES)
    .check(reportAnchors)
    .describe(
      `Write 1 to ${MOST_ENTRIES} entries as a list, for example [{"quantity": "density", "prefer": "low"}].`,
    );
}

function reportAnchors(payload: z.core.ParsePayload<RankEntry[]>): void {
  const several = payload.value.length > 1;
  payload.value.forEach((entry, index) => {
    const needed = several ? anchorsOf(entry) : [];
    const allowed = several ? [...needed, 'weight', 'shape'] : [];
    for (const key of ['from', 'to', 'within', 'weight', 'shape'] as const) {
      const given = entry[key] !== undefined;
      const values = { key, what: entry.quantity };
      if (given && !several) report(payload, 'specification/anchor-alone', values, [index, key]);
      else if (given && !allowed.includes(key))
        report(payload, 'specification/anchor-idle', values, [index, key]);
      else if (!given && needed.includes(key)) {
        report(payload, 'specification/anchor-missing', values, [index, key]);
      }
    }
    reportAnchorOrder(payload, entry, index);
  });
}

function anchorsOf(entry: RankEntry): string[] {
  return typeof entry.prefer === 'string' ? ['from', 'to'] : ['within'];
}

function reportAnchorOrder(
  payload: z.core.ParsePayload<RankEntry[]>,
  { quantity, from, to }: RankEntry,
  index: number,
): void {
  if (from === undefined || to === undefined || from < to) return;
  report(payload, 'specification/anchors-crossed', { what: quantity, from, to }, [index]);
}
