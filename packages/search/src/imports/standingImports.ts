import type { ImportKind } from '@tiegel/contract';
import type { JoinedStore, StoredImport } from '@tiegel/store';
import type { Entry, ImportKindOf } from './importKind.ts';
import { kinds } from './kinds.ts';

/** The files of a store that nobody withdrew. */
export interface StandingImports {
  /** In the order in which they came. */
  standingOf(kind: ImportKind): StoredImport[];
  /** Of a kind of which a file takes the place of another: the newest of each subject, in the order in which the subjects came first. */
  newest(kind: ImportKind): Map<string, StoredImport>;
  /** Of a kind whose files stand beside each other: the newest row of each key, with the number of its file. */
  holding(kind: ImportKind): Map<string, { number: number; entry: Entry }>;
  /** Does what changes the files; they are read anew after it. */
  changing<Value>(act: () => Value): Value;
}

/** Reads the files once, and keeps them until something is brought or withdrawn, here or by another process. */
export function standingImports(table: JoinedStore['imports']): StandingImports {
  const standing = new Map<ImportKind, StoredImport[]>();
  const held = new Map<ImportKind, Map<string, { number: number; entry: Entry }>>();
  let state = table.state();
  let looked = false;

  function forget(): void {
    standing.clear();
    held.clear();
  }

  /** Once for each stretch of work without a pause, which so sees one state of the data. */
  function look(): void {
    if (looked) return;
    looked = true;
    queueMicrotask(() => {
      looked = false;
    });
    const now = table.state();
    if (now !== state) forget();
    state = now;
  }

  function standingOf(kind: ImportKind): StoredImport[] {
    look();
    const found = standing.get(kind) ?? table.standing(kind);
    standing.set(kind, found);
    return found;
  }

  return {
    standingOf,
    newest: (kind) => new Map(standingOf(kind).map((one) => [one.subject, one] as const)),
    holding(kind) {
      look();
      const { entries } = kinds[kind] as ImportKindOf<unknown>;
      const found =
        held.get(kind) ??
        new Map(
          standingOf(kind).flatMap(({ number, data }) =>
            entries(data).map((entry) => [entry.key, { number, entry }] as const),
          ),
        );
      held.set(kind, found);
      return found;
    },
    changing(act) {
      forget();
      return act();
    },
  };
}
