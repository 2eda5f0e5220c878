import type { CandidateQuery } from '@tiegel/contract';
import { conditions, conditionsOf, quantities } from '@tiegel/screening';
import type { ExportHead } from '../searches.ts';

/**
 * All that the rows of an export depend on, by key, as plain JSON: the same specification on the
 * same data and prices with the same engine gives the same rows. `selection` says which of the
 * kept candidates are here and in which order.
 */
export function provenance({ search, columns }: ExportHead, query: CandidateQuery) {
  const { ranges, front, has, without, order, direction } = query;
  return {
    search: search.id,
    name: search.name,
    question: search.question,
    specification: search.specification,
    conditions: conditionsUsed(columns, search),
    dataVersion: search.dataVersion,
    engineVersion: search.engineVersion,
    prices: search.prices,
    counts: search.counts,
    kept: search.kept,
    selection: {
      ranges: inOrder(ranges, search),
      ...(front ? { front } : {}),
      has,
      without,
      order,
      direction,
    },
  };
}

/**
 * Each condition that a column computes with, set or default, by name; null where none holds, as for grains. Late and own
 * quantities read none that the others, which are always columns, do not.
 */
function conditionsUsed(
  columns: ExportHead['columns'],
  { specification: { conditions: set = {} } }: ExportHead['search'],
): Record<string, { value: number | null; unit: string }> {
  const printed = quantities.filter(({ id }) => columns.includes(id));
  const used = new Set(printed.flatMap(conditionsOf));
  return Object.fromEntries(
    Object.values(conditions)
      .filter(({ name }) => used.has(name))
      .map(({ name, unit, default: usual }) => [name, { value: set[name] ?? usual, unit }]),
  );
}

/** Ranges in the order of the quantities: whoever writes them in another asks for the same file. */
function inOrder(
  ranges: CandidateQuery['ranges'],
  { moreQuantities }: ExportHead['search'],
): CandidateQuery['ranges'] {
  const ids = [...quantities, ...moreQuantities].map(({ id }) => id);
  return ranges.toSorted((one, other) => ids.indexOf(one.quantity) - ids.indexOf(other.quantity));
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
