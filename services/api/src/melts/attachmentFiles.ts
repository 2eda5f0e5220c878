import { globSync, rmSync } from 'node:fs';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { problem } from '@tiegel/contract';

/** The contents of attachments, one file each, named by the id alone: what somebody called it never becomes a path. */
export interface AttachmentFiles {
  /** The content is on the disk, whole, when this ends; nothing of it where it fails. Rejects with store/full. */
  write(id: string, content: Buffer): Promise<void>;
  /** The content, if it is there and whole; rejects where it is not, before anything is read. */
  read(id: string, size: number): Promise<Readable>;
  remove(id: string): Promise<void>;
}

const unfinished = '.half';

/**
 * What a process that died left half-written is taken away at once: one process alone writes into the folder.
 * @param folder made when it is first needed
 */
export function attachmentFiles(folder: string): AttachmentFiles {
  for (const half of globSync(`*${unfinished}`, { cwd: folder })) rmSync(join(folder, half), { force: true });
  const fileOf = (id: string) => {
    if (!/^[0-9a-z]+$/.test(id)) throw new RangeError(`"${id}" is no id of an attachment`);
    return join(folder, id);
  };
  return {
    async write(id, content) {
      const whole = fileOf(id);
      const half = `${whole}${unfinished}`;
      try {
        await mkdir(folder, { recursive: true });
        await writeToDisk(half, content);
        await rename(half, whole);
      } catch (error) {
        await rm(half, { force: true }).catch(() => {});
        throw writingProblem(error as NodeJS.ErrnoException, whole);
      }
    },
    async read(id, size) {
      const file = await open(fileOf(id), 'r');
      const { size: found } = await file.stat();
      if (found === size) return file.createReadStream();
      await file.close();
      throw new Error(`The attachment ${fileOf(id)} has ${found} bytes in place of ${size}.`);
    },
    remove: (id) => rm(fileOf(id), { force: true }),
  };
}

async function writeToDisk(path: string, content: Buffer): Promise<void> {
  const file = await open(path, 'wx', 0o600);
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** A disk or a quota that is full as the database tells it; any other error as it is. */
function writingProblem(error: NodeJS.ErrnoException, file: string): Error {
  const isFull = error.code === 'ENOSPC' || error.code === 'EDQUOT';
  return isFull ? problem('store/full', { file, why: error.message }) : error;
}
