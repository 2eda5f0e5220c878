import type { ObservedAlloy } from '@tiegel/insight';

/**
 * The melts of a database whose phases were observed, and such alloys that were brought in.
 * @throws ProblemError as openLaboratory does
 */
export async function observedIn(
  database: string,
): Promise<{ melts: ObservedAlloy[]; broughtIn: ObservedAlloy[] }> {
  const { openLaboratory } = await import('../searching/openLaboratory.ts');
  const { melts, imports, close } = openLaboratory(database);
  try {
    return { melts: melts.observed(), broughtIn: imports.observed() };
  } finally {
    close();
  }
}
