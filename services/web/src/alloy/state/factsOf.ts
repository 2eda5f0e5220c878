import type { Facts } from '@tiegel/contract';
import { columns, type PairRecord, priceColumn } from '@tiegel/elements';
import type { ElementView } from '../../server/types.ts';

/** The data that the server tells, cut to a composition's elements, as screening takes them. */
export function factsOf(
  symbols: readonly string[],
  elements: readonly ElementView[],
  pairs: readonly PairRecord[],
): Facts {
  const ordered = [...symbols].sort();
  const records = ordered.map((symbol) => elements.find((element) => element.symbol === symbol));
  const numbers = [...columns.filter(({ holds }) => holds === 'numbers'), priceColumn].map(({ id }) => [
    id,
    records.map((record) => (typeof record?.[id] === 'number' ? record[id] : null)),
  ]);
  const enthalpies = new Map(pairs.map(({ a, b, mixingEnthalpy }) => [[a, b].sort().join(), mixingEnthalpy]));
  const matrix = ordered.map((a) =>
    ordered.map((b) => (a === b ? 0 : (enthalpies.get([a, b].sort().join()) ?? null))),
  );
  return { symbols: ordered, columns: Object.fromEntries(numbers), pairs: { mixingEnthalpy: matrix } };
}
