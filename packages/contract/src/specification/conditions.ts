import { z } from 'zod';

/** What the contract must know of a condition: its name, unit and allowed range, both ends included. */
export interface KnownCondition {
  name: string;
  label: string;
  unit: string;
  /** null: none */
  default: number | null;
  range: { min: number; max: number };
}

/** The section `conditions`: temperatures and the like by name, in the unit of each. What is left out takes its default. */
export function conditionsSchema(known: readonly KnownCondition[]) {
  const shape = Object.fromEntries(known.map((condition) => [condition.name, numberFor(condition)]));
  const example = JSON.stringify(
    Object.fromEntries(known.slice(0, 1).map(({ name, range }) => [name, range.max])),
  );
  return z.strictObject(shape).describe(`Write conditions by name, for example ${example}.`) as z.ZodType<
    Record<string, number>
  >;
}

function numberFor({ label, unit, default: value, range: { min, max } }: KnownCondition) {
  return z
    .number()
    .min(min)
    .max(max)
    .describe(
      `Write the ${label.toLowerCase()} as a number from ${min} to ${max} ${unit}; the default is ${value ?? 'none'}.`,
    )
    .exactOptional();
}
