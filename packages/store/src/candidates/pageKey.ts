import { createHash } from 'node:crypto';
import type { CandidateQuery } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import type { CandidateSet } from './candidateSet.ts';

/**
 * The opaque key of the page behind a place of an order. It names search, filters and order, so that it
 * cannot be used with another: rows would be left out or come twice, and nobody would notice.
 */
export function pageKey({ search }: CandidateSet, query: CandidateQuery, place: number): string {
  const { order, direction } = query;
  const parts = [search, filtersMark(query), order, direction, place];
  return Buffer.from(JSON.stringify(parts)).toString('base64url');
}

/** The place that a key stands for. Throws request/invalid for anything that is not a key of the search and query. */
export function placeOf(set: CandidateSet, query: CandidateQuery, key: string): number {
  const [search, filters, order, direction, place, ...rest] = parsed(key);
  if (!Number.isSafeInteger(place) || (place as number) < 0 || rest.length > 0)
    throw refused('is not a key that a page gave as "next"');
  if (search !== set.search) throw refused('is a key of a page of another search');
  if (order !== query.order || direction !== query.direction)
    throw refused('is a key of a page in another order');
  if (filters !== filtersMark(query)) throw refused('is a key of a page with other filters');
  return place as number;
}

function refused(why: string) {
  const right = 'Ask for the first page, and for those that follow in the same search, filters and order.';
  return problem('request/invalid', { what: `"after" ${why}`, right }, '/after');
}

/** The same for the same filters, in whatever order they were written. */
function filtersMark({ ranges, has, without, front }: CandidateQuery): string {
  const bounds = ranges.map(({ quantity, min = null, max = null }) => JSON.stringify([quantity, min, max]));
  const filters = JSON.stringify([bounds.toSorted(), has.toSorted(), without.toSorted(), front ?? false]);
  return createHash('sha256').update(filters).digest('base64url').slice(0, 8);
}

function parsed(key: string): unknown[] {
  try {
    const parts: unknown = JSON.parse(Buffer.from(key, 'base64url').toString());
    return Array.isArray(parts) ? parts : [];
  } catch {
    return [];
  }
}
