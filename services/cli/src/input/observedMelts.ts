import type { ObservedAlloy } from '@tiegel/insight';

/**
 * The melts of a database whose phases were observed.
 * @throws ProblemError as openLaboratory does
 */
export async function observedMelts(database: string): Promise<ObservedAlloy[]> {
  const { openLaboratory } = await import('../searching/openLaboratory.ts');
  const { melts, close } = openLaboratory(database);
  try {
    return melts.observed();
  } finally {
    close();
  }
}
