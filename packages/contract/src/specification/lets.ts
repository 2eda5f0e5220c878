import { z } from 'zod';
import { report } from '../problem/faultsOf.ts';
import { jsonPointer } from '../problem/jsonPointer.ts';
import { type Fault, fault } from '../problem/problem.ts';

const MOST_LETS = 16;
const LONGEST_TEXT = 2000;

/** The section `lets`: figures of merit of one's own by name, in the usual notation. What they mean is read elsewhere. */
export const letsSchema = z
  .record(
    z.string().max(64),
    z
      .string()
      .min(1)
      .max(LONGEST_TEXT)
      .describe('Write an expression over quantities as a text, for example "shearModulus / density".'),
  )
  .check((payload) => {
    const count = Object.keys(payload.value).length;
    if (count > MOST_LETS) report(payload, 'specification/too-many-lets', { count, limit: MOST_LETS });
  })
  .describe(
    `Write at most ${MOST_LETS} expressions by name, for example {"stiffnessByDensity": "youngsModulus / density"}.`,
  );

/** The names that a request gives to expressions, whether or not the rest of it is right. */
export function letNames(request: unknown): string[] {
  if (typeof request !== 'object' || request === null) return [];
  const lets: unknown = Object.getOwnPropertyDescriptor(request, 'lets')?.value;
  return Object.keys(letsSchema.safeParse(lets).data ?? {});
}

/** What the schema of a record leaves out without a word: a name such as "__proto__". */
export function namesLeftOut(lets: object, read: object): Fault[] {
  return Object.keys(lets)
    .filter((name) => !Object.hasOwn(read, name))
    .map((name) => fault('expression/name', { name }, jsonPointer(['lets', name])));
}
