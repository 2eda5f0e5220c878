import { z } from 'zod';

/** The part of a schema that speaks of a place in a request, or null where the schema has no such place. */
function schemaAt(schema: z.ZodType, path: readonly PropertyKey[]): z.ZodType | null {
  const [step, ...rest] = path;
  if (step === undefined) return schema;
  for (const inner of insideOf(schema, step)) {
    const found = schemaAt(inner, rest);
    if (found) return found;
  }
  return null;
}

/** The keys that a schema allows at a place, in its order; of a union, those of all its objects. */
export function keysAt(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  const place = schemaAt(schema, path);
  return place ? keysOf(place) : [];
}

/** What the schema says of a place, wherever it is wrapped as optional or nullable. */
export function descriptionAt(schema: z.ZodType, path: readonly PropertyKey[]): string | null {
  let place = schemaAt(schema, path);
  while (place instanceof z.ZodType && place.description === undefined) {
    const inner = unwrapped(place);
    if (inner === null) break;
    place = inner;
  }
  return place?.description ?? null;
}

function insideOf(schema: z.ZodType, step: PropertyKey): z.ZodType[] {
  if (schema instanceof z.ZodObject) {
    return Object.hasOwn(schema.shape, step) ? [schema.shape[step as string]] : [];
  }
  if (schema instanceof z.ZodArray) return [schema.element as z.ZodType];
  return alternativesOf(schema).flatMap((one) => insideOf(one, step));
}

function keysOf(schema: z.ZodType): string[] {
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape);
  return alternativesOf(schema).flatMap(keysOf);
}

function alternativesOf(schema: z.ZodType): z.ZodType[] {
  if (schema instanceof z.ZodUnion) return schema.options as z.ZodType[];
  const inner = unwrapped(schema);
  return inner === null ? [] : [inner];
}

/** What is inside of a schema that lets a value be missing or null, or has one for it; null for any other. */
function unwrapped(schema: z.ZodType): z.ZodType | null {
  const wraps =
    schema instanceof z.ZodOptional ||
    schema instanceof z.ZodExactOptional ||
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodNullable;
  return wraps ? (schema.unwrap() as z.ZodType) : null;
}
