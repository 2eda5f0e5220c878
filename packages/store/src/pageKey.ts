import type { CandidateQuery } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';

/** The opaque key of the page behind a place of an order. It names the order, so that it cannot be used with another. */
export function pageKey({ order, direction }: CandidateQuery, place: number): string {
  return Buffer.from(JSON.stringify([order, direction, place])).toString('base64url');
}

/** The place that a key stands for. Throws request/invalid for anything that is not a key of the query's order. */
export function placeOf(query: CandidateQuery, key: string): number {
  const [order, direction, place, ...rest] = parsed(key);
  const whole =
    order === query.order &&
    direction === query.direction &&
    Number.isSafeInteger(place) &&
    rest.length === 0;
  if (!whole || (place as number) < 0) {
    const what = `"after" is not a key of a page in the order ${query.order} ${query.direction}`;
    throw problem('request/invalid', { what }, '/after');
  }
  return place as number;
}

function parsed(key: string): unknown[] {
  try {
    const parts: unknown = JSON.parse(Buffer.from(key, 'base64url').toString());
    return Array.isArray(parts) ? parts : [];
  } catch {
    return [];
  }
}
