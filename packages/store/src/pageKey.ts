import { type CandidateQuery, problem } from '@tiegel/contract';

/** Where a page ended: the last row's value of the order (null: it has none) and its rank. */
export interface Place {
  value: number | null;
  rank: number;
}

/** The opaque key of the page after a place. It names its order, so that it cannot be used with another. */
export function pageKey(query: CandidateQuery, place: Place): string {
  const parts = [query.order, query.direction, place.value, place.rank];
  return Buffer.from(JSON.stringify(parts)).toString('base64url');
}

/** The place that a key stands for. Throws request/invalid for anything that is not a key of the query's order. */
export function placeOf(query: CandidateQuery, key: string): Place {
  const [order, direction, value, rank, ...rest] = parsed(key);
  const whole =
    order === query.order &&
    direction === query.direction &&
    (value === null || typeof value === 'number') &&
    Number.isSafeInteger(rank) &&
    rest.length === 0;
  if (!whole) {
    const what = `"after" is not a key of a page in the order ${query.order} ${query.direction}`;
    throw problem('request/invalid', { what }, '/after');
  }
  return { value, rank: rank as number };
}

function parsed(key: string): unknown[] {
  try {
    const parts: unknown = JSON.parse(Buffer.from(key, 'base64url').toString());
    return Array.isArray(parts) ? parts : [];
  } catch {
    return [];
  }
}
