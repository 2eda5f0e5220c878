import type { OwnPair } from '@tiegel/elements';
import type { PairView } from './types.ts';

/** The pair values in force that somebody brought in. */
export function ownPairs(pairs: readonly PairView[]): OwnPair[] {
  return pairs.flatMap(
    ({ a, b, mixingEnthalpy, source, import: number = null, importName, importedAt = null }) =>
      number === null
        ? []
        : [
            {
              ...{ a, b, mixingEnthalpy, source: source ?? '', import: number },
              ...{ importName: importName ?? '', importedAt },
            },
          ],
  );
}
