import { inDigits } from '@tiegel/contract/terms';
import type { Searches } from '@tiegel/search';
import { tellFaults } from '../output/tellFaults.ts';

const signals = ['SIGINT', 'SIGTERM'] as const;

interface Kept {
  /** as the person wrote it */
  database: string;
  /** makes way on standard error for what is told */
  clear: () => void;
}

/**
 * Until the function returned is called, a signal that ends the program first pauses a search of a database,
 * so that it does not look as if somebody worked on it, and tells what was kept and how to go on.
 */
export function pauseOnSignal(searches: Searches, id: string, { database, clear }: Kept): () => void {
  const pause = () => {
    try {
      const { points, total } = searches.pause(id).progress;
      clear();
      const ofIt = `${id} --database ${database}`;
      console.error(
        `The search ${id} is paused: ${inDigits(points)} of ${inDigits(total)} points are kept in ${database}.\n` +
          `  Go on with "searches resume ${ofIt}", or end it for good with "searches cancel ${ofIt}".`,
      );
    } catch (error) {
      tellFaults(error);
    }
  };
  // Before the listener that ends the program.
  for (const signal of signals) process.prependOnceListener(signal, pause);
  return () => {
    for (const signal of signals) process.off(signal, pause);
  };
}
