import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';

/** A piece of a where clause, with the values of its question marks. */
export interface Condition {
  sql: string;
  values: readonly (string | number)[];
}

export const always: Condition = { sql: 'true', values: [] };

function condition(sql: string, ...values: (string | number)[]): Condition {
  return { sql, values };
}

function both(...conditions: readonly Condition[]): Condition {
  const real = conditions.filter((one) => one !== always);
  if (real.length === 0) return always;
  return {
    sql: real.map((one) => `(${one.sql})`).join(' and '),
    values: real.flatMap((one) => one.values),
  };
}

/** All that the query asks of a candidate. A candidate without a value lies in no range. */
export function filterOf(query: CandidateQuery): Condition {
  return both(
    query.front ? condition('front = 1') : always,
    ...query.ranges.flatMap(({ quantity, min, max }) => [
      condition(`${columnOf(quantity)} is not null`),
      min === undefined ? always : condition(`${columnOf(quantity)} >= ?`, min),
      max === undefined ? always : condition(`${columnOf(quantity)} <= ?`, max),
    ]),
    ...query.has.map((symbol) => condition("instr(' ' || system || ' ', ?) > 0", ` ${symbol} `)),
    ...query.without.map((symbol) => condition("instr(' ' || system || ' ', ?) = 0", ` ${symbol} `)),
  );
}
