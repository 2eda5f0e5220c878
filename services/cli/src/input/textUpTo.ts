import { InvalidArgumentError } from 'commander';

/** Reads a text of an argument or an option as the route of the same takes it: not empty, and no longer than that. */
export const textUpTo =
  (longest: number) =>
  (text: string): string => {
    const written = text.trim();
    if (written !== '' && written.length <= longest) return written;
    throw new InvalidArgumentError(`Write 1 to ${longest} characters, not ${written.length}.`);
  };
