import { limitTolerance } from './limitTolerance.ts';
import { meetsLimit } from './meetsLimit.ts';
import type { Limit } from './specification.ts';

/** How a value stands to a limit: met or not, and how far it is from the nearer bound; null where there is no value. */
export interface Margin {
  met: boolean;
  margin: number | null;
}

export function marginOf(limit: Limit, value: number | null | undefined): Margin {
  if (value === null || value === undefined) return { met: false, margin: null };
  const { min, max } = limit;
  const rooms = [min === undefined ? null : value - min, max === undefined ? null : max - value];
  const margin = Math.min(...rooms.map((room) => room ?? Number.POSITIVE_INFINITY));
  const slack = limitTolerance(margin === rooms[0] ? min! : max!);
  return { met: meetsLimit(value, limit) === true, margin: Math.abs(margin) <= slack ? 0 : margin };
}
