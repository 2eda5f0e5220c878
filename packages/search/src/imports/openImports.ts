import { pureMaterials } from '@tiegel/charge';
import type { FateCounts, ImportKind, ImportPreview, ImportVersion } from '@tiegel/contract';
import { fault, ProblemError, problem } from '@tiegel/contract/terms';
import {
  demoPrices,
  type OwnAlloy,
  type OwnColumn,
  type PairValue,
  type PriceList,
  pairRecords,
  symbols,
} from '@tiegel/elements';
import { phaseClassOf } from '@tiegel/elements/publishedAlloys';
import type { ObservedAlloy } from '@tiegel/insight';
import type { JoinedStore, ListedImport, StoredImport } from '@tiegel/store';
import { dataVersions } from './dataVersions.ts';
import type { Entry, ImportKindOf } from './importKind.ts';
import type { Brought, Imports } from './imports.ts';
import { kinds, materialKind, pairKind, refuseTakenName } from './kinds.ts';
import { materialsFor } from './materialsFor.ts';
import { type ReadImport, readImport } from './readImport.ts';
import { standingImports } from './standingImports.ts';

/** What is in force as long as nobody brings something else. */
interface Given {
  prices?: PriceList | null | undefined;
}

/** The imports of a store: what is in force, what a file would change, and what people do to it. */
export function openImports(
  { imports: table, searches }: Pick<JoinedStore, 'imports' | 'searches'>,
  { prices: givenPrices = demoPrices }: Given = {},
): Imports {
  const { standingOf, holding, newest, changing } = standingImports(table);
  const brought = <Value>(kind: ImportKind): Brought<Value>[] =>
    [...holding(kind).values()].map(({ number, entry }) => ({ ...(entry.value as Value), import: number }));

  const prices = () => (newest('prices').get('')?.data as PriceList | undefined) ?? givenPrices;
  const columns = () => [...newest('column').values()].map(({ data }) => data as OwnColumn);
  const pairs: Imports['pairs'] = () => {
    const of = new Map(standingOf('pairs').map((one) => [one.number, one]));
    return brought<PairValue>('pairs').map((pair) => {
      const { name, at } = of.get(pair.import)!;
      return { ...pair, importName: name, importedAt: at };
    });
  };
  const alloys: Imports['alloys'] = () => brought('alloys');
  const materials: Imports['materials'] = () => {
    const own = brought<Brought<never>>('materials') as ReturnType<Imports['materials']>;
    const list = prices();
    const named = new Set(own.map(({ name }) => name));
    const pure = pureMaterials(symbols, list).materials.filter(({ name }) => !named.has(name));
    const currencyOf = (price: number | null) => (price === null ? null : (list?.currency ?? null));
    return [...own, ...pure.map((one) => ({ ...one, currency: currencyOf(one.price), import: null }))];
  };

  /** What a file of a kind would take the place of, by key. */
  function inForce(kind: ImportKind, subject: string): Map<string, string> {
    return new Map(entriesInForce(kind, subject).map(({ key, shown }) => [key, shown]));
  }
  function entriesInForce(kind: ImportKind, subject: string): Entry[] {
    const own = [...holding(kind).values()].map(({ entry }) => entry);
    const list = prices();
    switch (kind) {
      case 'prices':
        return list === null ? [] : kinds.prices.entries(list);
      case 'column':
        return columns()
          .filter(({ id }) => id === subject)
          .flatMap(kinds.column.entries);
      case 'pairs':
        return [...pairKind.entries(pairRecords().map(asPairValue)), ...own];
      case 'materials':
        return materials().flatMap((one) =>
          materialKind.entries({ materials: [one], currency: one.currency }),
        );
      case 'alloys':
        return own;
    }
  }

  /** The fate of every row, and what is lost where a file takes the place of another. */
  function fatesOf(kind: ImportKind, { rows, faults, subject, data }: ReadImport<unknown>): ImportPreview {
    const before = inForce(kind, subject);
    const told = rows.map(({ line, text, entry, faults: wrong }) => ({
      ...{ line, text, faults: wrong, before: entry === null ? null : (before.get(entry.key) ?? null) },
      fate: fateOf(entry, before),
    }));
    const counts = countsOf(told.map(({ fate }) => fate));
    const named = new Set(rows.map(({ entry }) => entry?.key));
    const replaces = (kind === 'prices' || kind === 'column') && data !== null;
    return {
      ...{ kind, rows: told, counts, faults },
      lost: replaces
        ? [...before].filter(([key]) => !named.has(key)).map(([key, shown]) => `${key}: ${shown}`)
        : [],
      storable: data !== null,
    };
  }

  function versionOf(stored: ListedImport, used: ReadonlyMap<number, number>): ImportVersion {
    const { number, kind, name, at, rows, counts, withdrawnAt } = stored;
    return {
      ...{ number, kind, name, at, rows, counts, withdrawnAt },
      inForce: withdrawnAt === null && numbersInForce(kind).has(number),
      searches: used.get(number) ?? 0,
    };
  }
  function numbersInForce(kind: ImportKind): Set<number> {
    const holders = kind === 'prices' || kind === 'column' ? newest(kind) : holding(kind);
    return new Set([...holders.values()].map(({ number }) => number));
  }
  /** How many searches were planned with each import. */
  function usedNumbers(): Map<number, number> {
    const used = new Map<number, number>();
    for (const { imports } of searches.list()) {
      for (const number of imports) used.set(number, (used.get(number) ?? 0) + 1);
    }
    return used;
  }
  function stored(number: number): StoredImport {
    const found = Number.isSafeInteger(number) ? table.find(number) : null;
    if (found === null) throw problem('import/unknown', { number });
    return found;
  }
  const told = (number: number) => versionOf(stored(number), usedNumbers());

  function keep(
    kind: ImportKind,
    data: unknown,
    { name = '', key = null }: { name?: string; key?: string | null } = {},
  ) {
    const { entries, subject, name: usual } = kinds[kind] as ImportKindOf<unknown>;
    const before = inForce(kind, subject(data));
    const fates = entries(data).map((entry) => fateOf(entry, before));
    const one = {
      ...{ kind, data, subject: subject(data), name: name.trim() || usual(data) },
      ...{ rows: fates.length, counts: countsOf(fates) },
    };
    return changing(() => table.enter(one, now(), key)).stored;
  }
  function setWithdrawn(number: number, at: string | null): ImportVersion {
    const { withdrawnAt } = stored(number);
    if ((withdrawnAt === null) !== (at === null)) changing(() => table.setWithdrawn(number, at));
    return told(number);
  }

  const behind = (ids: readonly string[]): number[] => {
    const list = newest('prices').get('');
    const read = ids.flatMap((id) => newest('column').get(id) ?? []);
    const numbers = [...(list === undefined ? [] : [list]), ...read].map(({ number }) => number);
    return [...new Set([...numbers, ...numbersInForce('pairs')])].sort((a, b) => a - b);
  };

  return {
    ...{ prices, columns, pairs, materials, behind },
    materialsFor: (composition) => materialsFor(composition, materials(), prices()?.currency ?? null),
    alloys,
    observed: () => alloys().flatMap(observedOf),
    preview: (kind, text) => fatesOf(kind, readImport(kinds[kind] as ImportKindOf<unknown>, text)),
    enter(kind, text, options) {
      const read = readImport(kinds[kind] as ImportKindOf<unknown>, text);
      if (read.data === null) throw refusal(read);
      return told(keep(kind, read.data, options).number);
    },
    list(kind) {
      const used = usedNumbers();
      const asked = table.list().filter((one) => kind === undefined || one.kind === kind);
      return asked.map((one) => versionOf(one, used));
    },
    view(number) {
      const found = stored(number);
      return { ...told(number), csv: (kinds[found.kind] as ImportKindOf<unknown>).csv(found.data) };
    },
    withdraw: (number) => setWithdrawn(number, now()),
    restore: (number) => setWithdrawn(number, null),
    dataVersions: () =>
      dataVersions({
        searches: searches.list(),
        imports: table.list(),
        prices: prices(),
        columns: columns(),
        pairs: pairs(),
        behind,
      }),
    replacePrices: (list) => void keep('prices', list),
    removePrices: () => void changing(() => table.withdrawAll('prices', '', now())),
    enterColumn(column) {
      refuseTakenName(column);
      keep('column', column);
    },
    removeColumn(id) {
      if (changing(() => table.withdrawAll('column', id, now())) === 0)
        throw problem('column/unknown', { id });
    },
  };
}

function observedOf({ composition, phases }: OwnAlloy): ObservedAlloy[] {
  if (phases === null) return [];
  const phaseClass = phaseClassOf(phases);
  const singlePhase = phaseClass === 'fcc' || phaseClass === 'bcc';
  return [
    { composition, system: Object.keys(composition).sort().join('-'), phases, phaseClass, singlePhase },
  ];
}

const now = () => new Date().toISOString();
const asPairValue = (record: { a: string; b: string; mixingEnthalpy: number }) => {
  const [a, b] = [record.a, record.b].sort() as [string, string];
  return { a, b, mixingEnthalpy: record.mixingEnthalpy, source: 'from the data of the program' };
};

function fateOf(entry: Entry | null, before: ReadonlyMap<string, string>): keyof FateCounts {
  if (entry === null) return 'refused';
  const shown = before.get(entry.key);
  if (shown === undefined) return 'new';
  return shown === entry.shown ? 'same' : 'changed';
}

function countsOf(all: readonly (keyof FateCounts)[]): FateCounts {
  const counts = { new: 0, changed: 0, same: 0, refused: 0 };
  for (const fate of all) counts[fate] += 1;
  return counts;
}

function refusal({ rows, faults }: ReadImport<unknown>): ProblemError {
  const refused = rows.filter(({ entry }) => entry === null).length;
  const all = [...faults, ...rows.flatMap((row) => row.faults)];
  return new ProblemError([fault('import/refused', { refused, rows: rows.length }), ...all]);
}
