import { createReadStream } from 'node:fs';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';

/** The contents of attachments, one file each, named by the id alone: what somebody called it never becomes a path. */
export interface AttachmentFiles {
  /** The content is on the disk, whole, when this ends. */
  write(id: string, content: Buffer): Promise<void>;
  read(id: string): Readable;
  remove(id: string): Promise<void>;
}

/** @param folder made when it is first needed */
export function attachmentFiles(folder: string): AttachmentFiles {
  const fileOf = (id: string) => {
    if (!/^[0-9a-z]+$/.test(id)) throw new RangeError(`"${id}" is no id of an attachment`);
    return join(folder, id);
  };
  return {
    async write(id, content) {
      await mkdir(folder, { recursive: true });
      const half = `${fileOf(id)}.half`;
      const file = await open(half, 'wx', 0o600);
      try {
        await file.writeFile(content);
        await file.sync();
      } finally {
        await file.close();
      }
      await rename(half, fileOf(id));
    },
    read: (id) => createReadStream(fileOf(id)),
    remove: (id) => rm(fileOf(id), { force: true }),
  };
}
