import { once } from 'node:events';
import { problem } from '@tiegel/contract/terms';
import { tellFaults } from './tellFaults.ts';
import { whyUnwritten } from './whyUnwritten.ts';

/**
 * Writes to standard output piece by piece, waiting where the reader is slower, so that a million
 * rows are never held at once. Text is for a screen, and holds what others wrote, notes and names: signs that would
 * steer the screen are written as JSON writes them, in which they mean the same. Bytes are a file, and stay.
 */
export async function standardOutput(
  pieces: Iterable<string> | AsyncIterable<string | Uint8Array>,
): Promise<void> {
  for await (const piece of pieces) {
    if (!process.stdout.write(typeof piece === 'string' ? readable(piece) : piece))
      await once(process.stdout, 'drain');
  }
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are meant.
const steering = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g;

const readable = (text: string): string =>
  text.replaceAll(steering, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);

/**
 * Ends the program at once where standard output takes no more: a reader that has enough (`tiegel ... | head`)
 * is no fault, all else is told, such as a disk that is full. Whoever writes there need not look after it.
 */
export function endWithReader(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    process.exit(tellFaults(problem('output/refused', { why: whyUnwritten(error) })));
  });
}
