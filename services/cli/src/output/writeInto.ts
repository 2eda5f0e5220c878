import {
  closeSync,
  createWriteStream,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
} from 'node:fs';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { problem } from '@tiegel/contract/terms';
import { placeOf } from '../input/readText.ts';
import { whyUnwritten } from './whyUnwritten.ts';

/**
 * Writes a file whole or not at all: it bears its name only when all of it is there. Where the name is a
 * link, the file that it leads to is replaced and the link stays.
 * @returns its length in bytes
 * @throws ProblemError as refuseExisting does, file/unwritable
 */
export async function writeInto(
  file: string,
  content: Readable,
  { overwrite = false } = {},
): Promise<number> {
  refuseExisting(file, { overwrite });
  const place = behindLinks(file);
  const unfinished = `${place}.${process.pid}.unfinished`;
  const remove = () => rmSync(unfinished, { force: true });
  // A signal ends the program at once, without the way through 'finally'.
  process.once('exit', remove);
  try {
    const target = createWriteStream(unfinished, { flags: 'wx' });
    await pipeline(content, target);
    renameSync(unfinished, place);
    return target.bytesWritten;
  } catch (error) {
    const { code, syscall } = error as NodeJS.ErrnoException;
    if (code === undefined || syscall === undefined) throw error;
    throw problem('file/unwritable', { file, why: whyUnwritten(error as NodeJS.ErrnoException) });
  } finally {
    remove();
    process.off('exit', remove);
  }
}

/**
 * Told before anything is worked out. A file takes the place of what bore its name: a device or a pipe would be
 * gone, whoever reads it would wait for ever; of a database all searches and melts would be, for a name that was
 * meant for --database.
 * @throws ProblemError file/exists, file/not-replaceable, file/unwritable for a folder and for a link to nothing
 */
export function refuseExisting(file: string, { overwrite = false }: { overwrite?: boolean }): void {
  const place = placeOf(file);
  const there = statSync(place, { throwIfNoEntry: false });
  if (there === undefined) {
    if (lstatSync(place, { throwIfNoEntry: false }) !== undefined)
      throw problem('file/unwritable', { file, why: 'it is a link to a place where nothing is' });
    return;
  }
  if (there.isDirectory()) throw problem('file/unwritable', { file, why: 'it is a folder' });
  if (!there.isFile()) throw problem('file/not-replaceable', { file, what: kindOf(there) });
  if (isDatabase(place)) throw problem('file/not-replaceable', { file, what: 'a database' });
  if (!overwrite) throw problem('file/exists', { file });
}

/** As every SQLite file begins. */
const databaseMark = 'SQLite format 3\0';

function isDatabase(place: string): boolean {
  const begin = Buffer.alloc(databaseMark.length);
  try {
    const opened = openSync(place, 'r');
    try {
      readSync(opened, begin, 0, begin.length, 0);
    } finally {
      closeSync(opened);
    }
  } catch {
    // What may not be read may be replaced all the same: its folder decides.
    return false;
  }
  return begin.toString('latin1') === databaseMark;
}

function behindLinks(file: string): string {
  const place = placeOf(file);
  return lstatSync(place, { throwIfNoEntry: false })?.isSymbolicLink() ? realpathSync(place) : place;
}

function kindOf(there: Stats): string {
  if (there.isFIFO()) return 'a named pipe';
  if (there.isSocket()) return 'a socket';
  return 'a device';
}
