import {
  accessSync,
  chmodSync,
  constants,
  copyFileSync,
  existsSync,
  mkdtempSync,
  rmSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { ProblemError, problem } from '@tiegel/contract/terms';
import { type JoinedStore, type JoinOptions, joinStore } from './joinStore.ts';

interface ReadOptions extends JoinOptions {
  /** whether this user may write a file or folder; asked of the system where it is left out */
  mayWrite?: (place: string) => boolean;
}

/**
 * Opens a database for a command that only reads. Where this user may not write the file or its folder, a copy of it
 * is read, which goes at close: SQLite writes beside a file also when it reads, what several who are at work know of
 * each other. What people write down is refused there (store/read-only), for it would go with the copy.
 *
 * Throws as joinStore does: a file beside which another program's work lies, unfinished or going on, is not copied.
 */
export function readStore({ mayWrite = isWritable, ...options }: ReadOptions): JoinedStore {
  const file = resolve(options.file);
  if (!existsSync(file) || (mayWrite(file) && mayWrite(dirname(file)))) return joinStore(options);
  const copy = copyOf(file);
  if (copy === null) return joinStore(options);
  try {
    const store = joinStore({ ...options, file: copy.file, readAs: file });
    return {
      ...store,
      close() {
        store.close();
        copy.remove();
      },
    };
  } catch (error) {
    copy.remove();
    throw named(error, copy.file, file);
  }
}

/** What is wrong with a file from its first page on is told of the copy, which nobody knows. */
function named(error: unknown, copy: string, file: string): unknown {
  if (!(error instanceof ProblemError)) return error;
  return new ProblemError(
    error.faults.map((fault) => ({ ...fault, detail: fault.detail.replaceAll(copy, file) })),
  );
}

function isWritable(place: string): boolean {
  try {
    accessSync(place, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** A copy in a folder of its own, until `remove` or the end of the process; null where somebody is, or was, at work on the file. Throws store/unreachable. */
function copyOf(file: string): { file: string; remove: () => void } | null {
  const before = stateOf(file);
  if (before === null) return null;
  const { folder, remove } = temporaryFolder(file);
  const copy = join(folder, 'searches.db');
  try {
    // Cloned where the file system can: then it takes neither time nor room.
    copyFileSync(file, copy, constants.COPYFILE_FICLONE);
    chmodSync(copy, 0o600);
  } catch (error) {
    remove();
    throw unreachable(file, error);
  }
  if (stateOf(file) === before) return { file: copy, remove };
  remove();
  return null;
}

function temporaryFolder(file: string): { folder: string; remove: () => void } {
  let folder: string;
  try {
    folder = mkdtempSync(join(tmpdir(), 'tiegel-'));
  } catch (error) {
    throw unreachable(file, error);
  }
  const remove = () => {
    process.off('exit', remove);
    rmSync(folder, { recursive: true, force: true });
  };
  process.on('exit', remove);
  return { folder, remove };
}

const unreachable = (file: string, error: unknown) =>
  problem('store/unreachable', { file, why: (error as Error).message });

/** What changes with whatever is written into a database at rest; null where it is not at rest, for part of it lies in a file beside it. */
function stateOf(file: string): string | null {
  if (existsSync(`${file}-wal`) || existsSync(`${file}-journal`)) return null;
  const { mtimeNs, size, ino } = statSync(file, { bigint: true });
  return `${ino} ${size} ${mtimeNs}`;
}
