import { z } from 'zod';
import { report, shortened } from '../problem/faultsOf.ts';
import { nearest } from '../problem/nearest.ts';
import type { ElementsRequest } from './effectivePool.ts';

const LONGEST_SYMBOL = 64;

/** The section `elements` of a specification: sets of symbols out of `known`. */
export function elementsSchema(known: readonly string[]) {
  const names = new Set(known);
  const symbol = z
    .string()
    .max(LONGEST_SYMBOL)
    .check((payload) => {
      if (names.has(payload.value)) return;
      const meant = nearest(payload.value, known) ?? '';
      report(payload, 'specification/unknown-element', { symbol: shortened(payload.value), meant });
    })
    .describe('Write the symbol of an element whose data are known, for example "Ni".')
    .meta({ enum: [...known] });
  const symbols = (what: string) =>
    z.array(symbol).max(known.length).check(reportDuplicates).describe(`Write ${what} as a list of symbols.`);
  return z
    .strictObject({
      pool: symbols('the elements to choose from'),
      require: symbols('the elements that every alloy must have').exactOptional(),
      forbid: symbols('the elements that no alloy may have').exactOptional(),
    })
    .check(reportRequiredAndForbidden)
    .describe('Write the elements to choose from, for example {"pool": ["Al", "Co", "Cr", "Fe", "Ni"]}.');
}

function reportDuplicates(payload: z.core.ParsePayload<string[]>): void {
  const seen = new Set<string>();
  payload.value.forEach((symbol, index) => {
    if (seen.has(symbol)) report(payload, 'specification/duplicate-element', { symbol }, [index]);
    seen.add(symbol);
  });
}

function reportRequiredAndForbidden(payload: z.core.ParsePayload<ElementsRequest>): void {
  payload.value.forbid?.forEach((symbol, index) => {
    if (!payload.value.require?.includes(symbol)) return;
    report(payload, 'specification/required-and-forbidden', { symbol }, ['forbid', index]);
  });
}
