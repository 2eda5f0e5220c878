import type { MaterialEntry } from '@tiegel/charge';
import type { DataVersions, ImportKind, ImportPreview, ImportVersion } from '@tiegel/contract';
import type { Composition, OwnAlloy, OwnColumn, OwnPair, PriceList } from '@tiegel/elements';
import type { ObservedAlloy } from '@tiegel/insight';
import type { PricedMaterial } from './kinds.ts';

/** Something of one's own that holds now, with the number of the import that brought it. */
export type Brought<Value> = Value & { import: number };

/** A raw material that holds now; `import` is null for a pure element of the price list in force. */
export type MaterialInForce = PricedMaterial & { import: number | null };

/**
 * Data of the laboratory's own: what was brought in, in versions, and what of it is in force. Of
 * price lists the newest that was not withdrawn holds; of columns the newest of each id; of pairs,
 * raw materials and alloys the newest row of each pair, name and alloy, whichever file brought it.
 * Searches keep what they were planned with.
 */
export interface Imports {
  /** What would become of each row of a file; nothing is stored. */
  preview(kind: ImportKind, text: string): ImportPreview;
  /**
   * Stores a whole file, or, where a row is refused, nothing. The same key, sent again, gives the
   * version that it stored first.
   * @throws ProblemError import/refused, and with it every fault of the file
   */
  enter(kind: ImportKind, text: string, options?: { name?: string; key?: string | null }): ImportVersion;
  /** The newest first. */
  list(kind?: ImportKind): ImportVersion[];
  /** With its rows as a file. Throws import/unknown. */
  view(number: number): ImportVersion & { csv: string };
  /** Takes a version out of force; what it took the place of holds again. Throws import/unknown. */
  withdraw(number: number): ImportVersion;
  /** Throws import/unknown. */
  restore(number: number): ImportVersion;
  /** Which searches used which data, the current ones first. */
  dataVersions(): DataVersions;

  /** The list that somebody brought, else the one that this was opened with. */
  prices(): PriceList | null;
  /** Puts a list in force, as one that was brought. */
  replacePrices(list: PriceList): void;
  /** Withdraws every list that was brought. */
  removePrices(): void;
  columns(): OwnColumn[];
  /** Throws expression/name-taken where a quantity has its name. */
  enterColumn(column: OwnColumn): void;
  /** Withdraws every version of a column. Throws column/unknown. */
  removeColumn(id: string): void;
  /** Each with the import that brought it. */
  pairs(): Brought<OwnPair>[];
  alloys(): Brought<OwnAlloy>[];
  /** Those whose phases were observed, as records of rules take them. */
  observed(): ObservedAlloy[];
  /** Those that were brought, then the pure elements of the price list whose name no other has. */
  materials(): MaterialInForce[];
  /**
   * What an alloy is charged from: the materials that were brought in whose elements are all in it,
   * and pure elements where none of them is that element alone. Their prices are in one currency,
   * that of the price list, or without one that of the first; a price in another one is unknown here.
   */
  materialsFor(composition: Composition): { materials: MaterialEntry[]; currency: string | null };
  /** Numbers of the imports that a search planned now is made of, which reads these columns. */
  behind(columns: readonly string[]): number[];
}
