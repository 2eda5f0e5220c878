import type { DataVersions } from '@tiegel/contract';
import { dataVersionOf, type OwnColumn, type PairValue, type PriceList } from '@tiegel/elements';
import type { ListedImport, SearchRecord } from '@tiegel/store';

interface Known {
  /** newest first */
  searches: readonly SearchRecord[];
  imports: readonly ListedImport[];
  /** what is in force */
  prices: PriceList | null;
  columns: readonly OwnColumn[];
  pairs: readonly PairValue[];
  behind: (columns: readonly string[]) => number[];
}

/** Which searches used which data: the version of a search planned now, then every other, the newest first. */
export function dataVersions({ searches, imports, prices, columns, pairs, behind }: Known): DataVersions {
  const named = new Map(imports.map(({ number, kind, name }) => [number, { number, kind, name }]));
  const within = (numbers: readonly number[]) =>
    [...new Set(numbers)].sort((a, b) => a - b).flatMap((number) => named.get(number) ?? []);
  const versions = new Map<string, string | null>();
  /** The version that a search which reads these columns would have now; null where one of them is gone. */
  function today(ids: readonly string[]): string | null {
    const key = JSON.stringify(ids);
    if (!versions.has(key)) {
      const read = columns.filter(({ id }) => ids.includes(id));
      versions.set(key, read.length === ids.length ? dataVersionOf(prices, read, pairs) : null);
    }
    return versions.get(key)!;
  }
  const current = dataVersionOf(prices, [], pairs);
  const used = [...Map.groupBy(searches, ({ dataVersion }) => dataVersion)].map(([dataVersion, group]) => ({
    dataVersion,
    current: dataVersion === today(group[0]!.ownColumns.map(({ id }) => id)),
    firstUsed: group.at(-1)!.createdAt,
    searches: group.map(({ id, specification: { name }, createdAt }) => ({ id, name, createdAt })),
    with: within(group.flatMap((one) => one.imports)),
  }));
  const unused = {
    dataVersion: current,
    current: true,
    firstUsed: null,
    searches: [],
    with: within(behind([])),
  };
  const items = used.some(({ dataVersion }) => dataVersion === current) ? used : [unused, ...used];
  return { current, items: [...items.filter((one) => one.current), ...items.filter((one) => !one.current)] };
}
