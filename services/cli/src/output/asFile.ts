import type { Readable } from 'node:stream';
import { inDigits, problem } from '@tiegel/contract/terms';
import { jsonText } from './jsonText.ts';
import { refuseExisting, writeInto } from './writeInto.ts';

/** Where a file goes ('-' is standard output), and what is told of it. */
interface Destination {
  format: string;
  into: string;
  overwrite?: true | undefined;
  json?: true | undefined;
}

/**
 * Writes a file that is opened only when its place is free, and says how long it is.
 * @returns what goes to standard output
 * @throws ProblemError command/usage, file/exists, file/unwritable
 */
export async function asFile(
  { format, into, overwrite = undefined, json }: Destination,
  open: () => Promise<Readable>,
): Promise<Iterable<string> | AsyncIterable<Uint8Array>> {
  if (into === '-') {
    if (json) throw problem('command/usage', { what: 'standard output holds the file or JSON, not both.' });
    return open();
  }
  const over = { overwrite: overwrite === true };
  refuseExisting(into, over);
  const bytes = await writeInto(into, await open(), over);
  return json ? jsonText({ file: into, format, bytes }) : [`${into}: ${inDigits(bytes)} bytes.\n`];
}
