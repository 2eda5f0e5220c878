import type { CandidateQuery } from '@tiegel/contract';
import type { ExportHead } from '@tiegel/search';

/**
 * All that the rows of an export depend on, by key, as plain JSON: the same specification on the
 * same data and prices with the same engine gives the same rows. `selection` says which of the
 * kept candidates are here and in which order.
 */
export function provenance({ search }: ExportHead, query: CandidateQuery) {
  const { ranges, front, has, without, order, direction } = query;
  return {
    search: search.id,
    name: search.name,
    question: search.question,
    specification: search.specification,
    dataVersion: search.dataVersion,
    engineVersion: search.engineVersion,
    prices: search.prices,
    counts: search.counts,
    kept: search.kept,
    selection: { ranges, ...(front ? { front } : {}), has, without, order, direction },
  };
}

export type Provenance = ReturnType<typeof provenance>;

/** The same as lines of text: words as they are, all else as JSON. */
export function provenanceTexts(all: Provenance): [key: string, text: string][] {
  return Object.entries(all).map(([key, value]) => [
    key,
    typeof value === 'string' ? oneLine(value) : JSON.stringify(value),
  ]);
}

/** A name that somebody typed must not begin a line of its own. */
function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ');
}
