import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';

/** A piece of a where clause, with the values of its question marks. */
export interface Condition {
  sql: string;
  values: readonly (string | number)[];
}

export const always: Condition = { sql: 'true', values: [] };

export function condition(sql: string, ...values: (string | number)[]): Condition {
  return { sql, values };
}

export function both(...conditions: readonly Condition[]): Condition {
  const real = conditions.filter((one) => one !== always);
  if (real.length === 0) return always;
  return {
    sql: real.map((one) => `(${one.sql})`).join(' and '),
    values: real.flatMap((one) => one.values),
  };
}

/** The ranges asked of one quantity; a candidate without a value lies in none. */
export function rangeOf(query: CandidateQuery, quantity: string): Condition {
  return ranges(query, (asked) => asked === quantity);
}

/** All that the query asks of a candidate, but for the ranges of one quantity, which `except` names. */
export function filterOf(query: CandidateQuery, except: string | null = null): Condition {
  const has = query.has.map((symbol) => condition("instr(' ' || system || ' ', ?) > 0", ` ${symbol} `));
  const without = query.without.map((symbol) =>
    condition("instr(' ' || system || ' ', ?) = 0", ` ${symbol} `),
  );
  return both(
    ranges(query, (asked) => asked !== except),
    ...has,
    ...without,
  );
}

function ranges(query: CandidateQuery, which: (quantity: string) => boolean): Condition {
  const asked = query.ranges.filter((range) => which(range.quantity));
  return both(
    ...asked.flatMap(({ quantity, min, max }) => [
      ...(min === undefined ? [] : [condition(`${columnOf(quantity)} >= ?`, min)]),
      ...(max === undefined ? [] : [condition(`${columnOf(quantity)} <= ?`, max)]),
    ]),
  );
}
