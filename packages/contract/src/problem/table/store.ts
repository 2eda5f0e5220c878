import type { ProblemKind } from '../problemKind.ts';

/** The database. */
export const storeProblems = {
  'store/in-use': {
    status: 503,
    exit: 2,
    text: ({ file }: { file: string }) => `The database ${file} is in use by another process.`,
    remedy:
      'Stop the other process, or name another file: one process works on the searches of a database. Short commands go on beside it.',
  },
  'store/newer': {
    status: 500,
    exit: 2,
    text: ({ file, found, known }: { file: string; found: number; known: number }) =>
      `The database ${file} has form ${found}; this release knows forms up to ${known}.`,
    remedy: 'Start the release that wrote it, or a later one.',
  },
  'store/foreign': {
    status: 500,
    exit: 2,
    text: ({ file }: { file: string }) => `${file} is not a database of searches.`,
    remedy: 'Name another file; this one was left as it is.',
  },
  'store/unreachable': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) => `The database ${file} cannot be opened: ${why}.`,
    remedy: 'Name a file in a folder that this program may write to.',
  },
  'store/damaged': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) => `The database ${file} is damaged: ${why}.`,
    remedy: 'Stop the program, keep a copy of the file, and put a backup in its place.',
  },
  'store/full': {
    status: 507,
    exit: 2,
    text: ({ file }: { file: string }) => `The file ${file} cannot grow: the disk or its quota is full.`,
    remedy: 'Make room on the disk and resume; everything stored so far is kept.',
  },
  'store/busy': {
    status: 503,
    exit: 2,
    text: ({ file }: { file: string }) => `Another program keeps the database ${file} locked.`,
    remedy: 'Try again when it has finished, or close it; everything stored so far is kept.',
  },
  'store/read-only': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) =>
      `The database ${file} may only be read by whoever runs this program: ${why}.`,
    remedy:
      'Get the right to write the file and its folder, or copy the file into a folder of your own. Reading needs it too where a -wal or -journal file lies beside it: close the program that works on it.',
  },
  'store/failed': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) =>
      `The database ${file} did not take what was written: ${why}.`,
    remedy: 'Look at the disk and the rights of the file, and resume; everything stored so far is kept.',
  },
} satisfies Record<string, ProblemKind>;
