import { pairColumns } from '../data/columns.ts';
import { sources } from '../data/sources.ts';
import { pairEnthalpy } from '../pairEnthalpy.ts';
import type { PairValue } from './pairValues.ts';

/** A pair value of somebody's own as it holds, and what brought it. */
export interface OwnPair extends PairValue {
  /** number of the import; null: no import, a file that holds for one command */
  import: number | null;
  /** what the import is called, '' where nobody said; without an import the file */
  importName: string;
  /** UTC, ISO 8601; null without an import */
  importedAt: string | null;
}

/** The value of a pair of one's own where there is one, whatever the order of the two; of several the last holds. */
export function ownPairOf(own: readonly OwnPair[]): (a: string, b: string) => OwnPair | undefined {
  const byPair = new Map(own.map((pair) => [[pair.a, pair.b].sort().join('-'), pair]));
  return (a, b) => byPair.get([a, b].sort().join('-'));
}

/** Where a value of one's own is from: 'own value of 2026-11-29, import 3 (furnace trials): invented'. */
export function ownPairOrigin({ import: number, importName, importedAt, source }: OwnPair): string {
  const said = source === '' ? '' : `: ${source}`;
  if (number === null) return `own value of the file ${importName}${said}`;
  const day = importedAt === null ? '' : ` of ${importedAt.slice(0, 10)},`;
  return `own value${day} import ${number}${importName === '' ? '' : ` (${importName})`}${said}`;
}

/**
 * What the enthalpies of the pairs of these elements come from, a line each where one's own values
 * hold: 'Al–Ni −24 kJ/mol: own value of 2026-11-29, import 3; published: −22'.
 */
export function ownPairSources(symbols: readonly string[], own: readonly OwnPair[]): string[] {
  const find = ownPairOf(own);
  const ordered = [...new Set(symbols)].sort();
  return ordered.flatMap((a, at) =>
    ordered.slice(at + 1).flatMap((b) => {
      const pair = find(a, b);
      if (pair === undefined) return [];
      const published = pairEnthalpy(a, b);
      const beside = published === null ? 'none is published' : `published: ${printed(published)}`;
      return [
        `${a}–${b} ${printed(pair.mixingEnthalpy)} ${pairColumns[0].unit}: ${ownPairOrigin(pair)}; ${beside}`,
      ];
    }),
  );
}

/** The same behind the source of all others. */
export function pairSources(symbols: readonly string[], own: readonly OwnPair[]): string[] {
  // The citation alone: how far to trust the values stands with what is made of them.
  const [citation] = sources[pairColumns[0].source].text.split(':');
  return [`Pair enthalpies: ${citation}`, ...ownPairSources(symbols, own)];
}

const printed = (value: number): string => String(value).replace('-', '−');
