import type { z } from 'zod';
import { inDigits } from '../inDigits.ts';
import { jsonPointer, placeInWords } from './jsonPointer.ts';
import { limited, mostFaults } from './limited.ts';
import { nearest } from './nearest.ts';
import { type Fault, fault, type ProblemValues } from './problem.ts';
import type { ProblemCode } from './problems.ts';
import { descriptionAt, keysAt } from './schemaAt.ts';

/** A fault of the table, reported from a check of a schema; `path` leads on from the value that is checked. */
export function report(
  payload: z.core.ParsePayload,
  code: ProblemCode,
  values: ProblemValues = {},
  path: PropertyKey[] = [],
): void {
  payload.issues.push({
    code: 'custom',
    input: payload.value,
    path,
    params: { problem: code, values },
    message: code,
  });
}

/** What a caller knows better about a key that the schema does not have; null where it does not. */
export type UnknownKey = (path: readonly PropertyKey[], key: string) => Fault | null;

/**
 * All that is wrong with a request, as faults of the one table: where (a JSON pointer to the key
 * or value itself), what, and what would be right, which is the description that the schema gives
 * of the place. Empty when the request fits the schema.
 */
export function faultsOf(schema: z.ZodType, request: unknown, unknownKey: UnknownKey = () => null): Fault[] {
  const result = schema.safeParse(request, { reportInput: true });
  if (result.success) return [];
  return limited(result.error.issues.flatMap((issue) => faultsOfIssue(issue, [], { schema, unknownKey })));
}

interface Asked {
  schema: z.ZodType;
  unknownKey: UnknownKey;
}

function faultsOfIssue(issue: z.core.$ZodIssue, parent: readonly PropertyKey[], asked: Asked): Fault[] {
  const path = [...parent, ...issue.path];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys
        .slice(0, mostFaults + 1)
        .map((key) => asked.unknownKey(path, key) ?? unknownKeyFault(path, key, asked));
    case 'invalid_union': {
      const branch = reachedFurthest(issue);
      return branch
        ? branch.flatMap((one) => faultsOfIssue(one, path, asked))
        : [unfitting(issue.input, path, asked)];
    }
    case 'too_small':
    case 'too_big':
      return [outOfRange(issue, path, asked)];
    case 'custom':
      return [fault(issue.params?.problem, issue.params?.values, jsonPointer(path))];
    default:
      return [unfitting(issue.input, path, asked)];
  }
}

function unknownKeyFault(path: readonly PropertyKey[], key: string, asked: Asked): Fault {
  const known = keysAt(asked.schema, path);
  const meant = nearest(key, known);
  const values = {
    place: placeInWords(path),
    key: shortened(key),
    meant: meant ?? '',
    known: known.join(', '),
  };
  return fault('request/unknown-key', values, jsonPointer([...path, key]));
}

/** The only branch of a union whose kind of value is right, so that what is wrong inside it can be told. */
function reachedFurthest(issue: z.core.$ZodIssueInvalidUnion): readonly z.core.$ZodIssue[] | null {
  const wrongKind = (one: z.core.$ZodIssue) =>
    one.path.length === 0 && (one.code === 'invalid_type' || one.code === 'invalid_value');
  const reached = issue.errors.filter((branch) => !branch.some(wrongKind));
  return reached.length === 1 ? reached[0]! : null;
}

function unfitting(input: unknown, path: readonly PropertyKey[], asked: Asked): Fault {
  const right = rightAt(path, asked);
  if (input === undefined) {
    return fault('request/missing-key', { place: placeInWords(path), right }, jsonPointer(path));
  }
  const values = { place: placeInWords(path), found: inWords(input), right };
  return fault('request/wrong-value', values, jsonPointer(path));
}

function outOfRange(
  issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig,
  path: readonly PropertyKey[],
  asked: Asked,
): Fault {
  const bound = Number(issue.code === 'too_small' ? issue.minimum : issue.maximum);
  const place = placeInWords(path);
  const right = rightAt(path, asked);
  if (issue.origin === 'array' || issue.origin === 'string') {
    const size = (issue.input as string | unknown[]).length;
    const of = issue.origin === 'array' ? 'entries' : 'characters';
    const word = issue.code === 'too_small' ? 'at least' : 'at most';
    return fault('request/length', { place, size, of, word, bound, right }, jsonPointer(path));
  }
  const [edge, beyond] = issue.code === 'too_small' ? ['at least', 'above'] : ['at most', 'below'];
  const word = issue.inclusive ? edge! : beyond!;
  const values = { place, found: inWords(issue.input), word, bound, right };
  return fault('request/out-of-range', values, jsonPointer(path));
}

function rightAt(path: readonly PropertyKey[], asked: Asked): string {
  const described = descriptionAt(asked.schema, path);
  if (described !== null) return described;
  const keys = keysAt(asked.schema, path);
  return keys.length > 0 ? `Write an object with ${keys.join(', ')}.` : 'See the description of the request.';
}

/** A value as a sentence names it; long texts are cut, so that an answer stays readable. */
function inWords(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (value === '') return 'empty';
  if (typeof value === 'string') return `the text "${shortened(value)}"`;
  if (typeof value === 'number') return Number.isFinite(value) ? inDigits(value) : 'a number too large';
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

/** At most 40 characters of a text. */
export function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
