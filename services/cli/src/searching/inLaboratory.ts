import { standardOutput } from '../output/standardOutput.ts';
import type { Laboratory } from './openLaboratory.ts';

/** Text piece by piece, or a file. */
type Told = Iterable<string> | AsyncIterable<Uint8Array>;

/**
 * Opens the database named, which must be there, else that of the service; writes what is told from it; closes it.
 * @throws ProblemError those of openLaboratory and openToRead
 */
export async function inLaboratory(
  { database }: { database?: string },
  told: (laboratory: Laboratory) => Told | Promise<Told>,
): Promise<void> {
  const { openLaboratory, openToRead } = await import('./openLaboratory.ts');
  const laboratory = database === undefined ? openLaboratory(undefined) : openToRead(database);
  try {
    await standardOutput(await told(laboratory));
  } finally {
    laboratory.close();
  }
}
