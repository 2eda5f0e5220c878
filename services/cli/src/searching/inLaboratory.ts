import { standardOutput } from '../output/standardOutput.ts';
import type { Laboratory } from './openLaboratory.ts';

/** Text piece by piece, or a file. */
type Told = Iterable<string> | AsyncIterable<Uint8Array>;
export type Telling = (laboratory: Laboratory) => Told | Promise<Told>;

/**
 * Opens the database named, which must be there, else that of the service; writes what is told from it; closes it.
 * @throws ProblemError those of openToRead
 */
export async function inLaboratory({ database }: { database?: string }, told: Telling): Promise<void> {
  const { openToRead } = await import('./openLaboratory.ts');
  await tell(openToRead(database), told);
}

/**
 * The same for what may write: a database that is not there is made.
 * @throws ProblemError those of openLaboratory
 */
export async function changeLaboratory({ database }: { database?: string }, told: Telling): Promise<void> {
  const { openLaboratory } = await import('./openLaboratory.ts');
  await tell(openLaboratory(database), told);
}

async function tell(laboratory: Laboratory, told: Telling): Promise<void> {
  try {
    await standardOutput(await told(laboratory));
  } finally {
    laboratory.close();
  }
}
