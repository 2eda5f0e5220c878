import { createWriteStream, existsSync, renameSync, rmSync } from 'node:fs';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { problem } from '@tiegel/contract/terms';
import { placeOf } from '../input/readText.ts';

/**
 * Writes a file whole or not at all: it bears its name only when all of it is there.
 * @returns its length in bytes
 * @throws ProblemError file/exists where it is there and was not to be written over, file/unwritable
 */
export async function writeInto(
  file: string,
  content: Readable,
  { overwrite = false } = {},
): Promise<number> {
  const place = placeOf(file);
  refuseExisting(file, { overwrite });
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
    throw problem('file/unwritable', { file, why: whyNot(error as NodeJS.ErrnoException) });
  } finally {
    remove();
    process.off('exit', remove);
  }
}

/** Throws file/exists: told before anything is worked out. */
export function refuseExisting(file: string, { overwrite = false }: { overwrite?: boolean }): void {
  if (!overwrite && existsSync(placeOf(file))) throw problem('file/exists', { file });
}

function whyNot({ code, message }: NodeJS.ErrnoException): string {
  const words: Record<string, string> = {
    ENOENT: 'its folder is not there',
    ENOTDIR: 'its folder is a file',
    EISDIR: 'it is a folder',
    EACCES: 'the folder may not be written in',
    EPERM: 'the folder may not be written in',
    EROFS: 'the folder may only be read',
    ENOSPC: 'the disk is full',
  };
  return words[code ?? ''] ?? message;
}
