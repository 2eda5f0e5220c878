import { existsSync } from 'node:fs';
import { problem } from '@tiegel/contract/terms';
import { placeOf } from '../input/readText.ts';

/**
 * Opening makes a database, and one that is not there was misspelled by who only reads or goes on.
 * @throws ProblemError file/unreadable where there is no such file
 */
export function refuseAbsent(database: string): void {
  if (!existsSync(placeOf(database)))
    throw problem('file/unreadable', { file: database, why: 'there is no such file' });
}
