import { elementNumber } from '@tiegel/elements';

/** Where one element of an alloy boils and another has only just melted, K. */
export interface MeltingWindow {
  lowestBoiling: { element: string; temperature: number };
  /** null where no element has a melting temperature: carbon alone */
  highestMelting: { element: string; temperature: number } | null;
  /** lowest boiling less highest melting temperature, K; below 0 one boils before another melts */
  gap: number | null;
}

/** Lowest boiling and highest melting temperature among elements, and the gap between them. */
export function meltingWindow(symbols: readonly string[]): MeltingWindow {
  const known = (column: 'boilingTemperature' | 'meltingTemperature') =>
    symbols
      .flatMap((element) => {
        const temperature = elementNumber(element, column);
        return temperature === null ? [] : [{ element, temperature }];
      })
      .sort((a, b) => a.temperature - b.temperature);
  const lowestBoiling = known('boilingTemperature')[0]!;
  const highestMelting = known('meltingTemperature').at(-1) ?? null;
  return {
    lowestBoiling,
    highestMelting,
    gap: highestMelting === null ? null : lowestBoiling.temperature - highestMelting.temperature,
  };
}
