import type { PairView } from '@tiegel/contract';
import type { OwnPair } from '@tiegel/elements';

/** The pair values in force that somebody brought in. */
export function ownPairs(pairs: readonly PairView[]): OwnPair[] {
  return pairs.flatMap(({ a, b, mixingEnthalpy, source, import: number, importName, importedAt }) =>
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
