import { once } from 'node:events';

/**
 * Writes to standard output piece by piece, waiting where the reader is slower, so that a million
 * rows are never held at once.
 */
export async function standardOutput(
  pieces: Iterable<string> | AsyncIterable<string | Uint8Array>,
): Promise<void> {
  for await (const piece of pieces) {
    if (!process.stdout.write(piece)) await once(process.stdout, 'drain');
  }
}

/** A reader that has enough (`tiegel ... | head`) is no fault: the program ends at once, with 0. */
export function endWithReader(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });
}
