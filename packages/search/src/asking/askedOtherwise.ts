import { isDeepStrictEqual } from 'node:util';
import type { Schedule, SearchSpecification } from '@tiegel/contract';
import { usualSchedule } from '@tiegel/contract/terms';

interface Asked {
  specification: SearchSpecification;
  /** null: at any time, in turn with the others */
  schedule: Schedule | null;
}

/** The sections of a specification, and hours and priority, in which two requests for a search differ. The elements are sets: their order says nothing. */
export function askedOtherwise(one: Asked, other: Asked): string[] {
  const [first, second] = [partsOf(one), partsOf(other)];
  const names = new Set([...Object.keys(first), ...Object.keys(second)]);
  return [...names].filter((name) => !isDeepStrictEqual(first[name], second[name]));
}

function partsOf({ specification, schedule }: Asked): Record<string, unknown> {
  const { pool, require, forbid } = specification.elements;
  const elements = { pool: new Set(pool), require: new Set(require), forbid: new Set(forbid) };
  return { ...specification, elements, ...(schedule ?? usualSchedule) };
}
