import type { z } from 'zod';
import { faultsOf, shortened } from '../problem/faultsOf.ts';
import { jsonPointer } from '../problem/jsonPointer.ts';
import { limited } from '../problem/limited.ts';
import { nearest } from '../problem/nearest.ts';
import { type Fault, fault, ProblemError } from '../problem/problem.ts';
import { faultsBetween } from './faultsBetween.ts';
import { letNames, namesLeftOut } from './lets.ts';
import { migrate } from './migrate.ts';
import { noticesOf } from './noticesOf.ts';
import { type Known, requestSchema, type SearchRequest } from './requestSchema.ts';
import type { SearchSpecification } from './specification.ts';
import { withDefaults } from './withDefaults.ts';

/** A specification that is right: complete, and in words what was ignored or rounded in it. */
export interface Checked {
  specification: SearchSpecification;
  notices: string[];
}

export interface SpecificationCheck {
  /** The form of a request, described place by place: OpenAPI is made from it. */
  schema: z.ZodType<SearchRequest>;
  /**
   * Reads a request (JSON of any version, also none at all).
   * @throws ProblemError with every fault, each with the JSON pointer of the key or value itself
   */
  check(request: unknown): Checked;
}

/**
 * The check of search specifications, told what it must know: the quantities that may be limited
 * or ranked, and the symbols of the elements that have data.
 */
export function searchSpecificationFor(known: Known): SpecificationCheck {
  const schemaForAll = requestSchema(known);
  return {
    schema: schemaForAll,
    check(sent) {
      const request = migrate(sent);
      const names = letNames(request);
      const schema = names.length === 0 ? schemaForAll : requestSchema(withNames(known, names));
      const faults = [
        ...faultsOf(schema, request, (path, key) => unknownKey(path, key, known)),
        ...between(schema, request),
        ...letFaults(schema, request, known),
      ];
      if (faults.length > 0) throw new ProblemError(limited(faults));
      const specification = withDefaults(schema.parse(request));
      return { specification, notices: noticesOf(specification) };
    },
  };
}

/** Names of one's own may be limited and ranked like any quantity. */
function withNames(known: Known, names: readonly string[]): Known {
  return { ...known, quantities: [...known.quantities, ...names.map((id) => ({ id }))] };
}

function letFaults({ shape }: ReturnType<typeof requestSchema>, request: unknown, known: Known): Fault[] {
  if (typeof request !== 'object' || request === null) return [];
  const sent: unknown = Object.getOwnPropertyDescriptor(request, 'lets')?.value;
  const lets = shape.lets.safeParse(sent).data;
  if (lets === undefined) return [];
  return [...namesLeftOut(Object(sent), lets), ...(known.letFaults?.(lets) ?? [])];
}

function between(schema: ReturnType<typeof requestSchema>, request: unknown): Fault[] {
  if (typeof request !== 'object' || request === null) return [];
  const { elements, components, fractions } = schema.shape;
  const read = <Section>(section: z.ZodType<Section>, key: string): Section | null =>
    section.safeParse(Object.getOwnPropertyDescriptor(request, key)?.value).data ?? null;
  return faultsBetween({
    elements: read(elements, 'elements'),
    components: read(components, 'components'),
    fractions: read(fractions, 'fractions'),
  });
}

/** Where an unknown key is more than a slip: a symbol among the bounds. */
function unknownKey(path: readonly PropertyKey[], key: string, known: Known): Fault | null {
  if (jsonPointer(path) === '/fractions/each') {
    const meant = nearest(key, known.elements) ?? '';
    return fault(
      'specification/unknown-element',
      { symbol: shortened(key), meant },
      jsonPointer([...path, key]),
    );
  }
  return null;
}
