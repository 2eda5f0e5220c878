import { effectivePool, type Facts, type Plan, type SearchSpecification } from '@tiegel/contract';
import { demoPrices, factsFor, type OwnColumn, withOwnColumn } from '@tiegel/elements';
import { engineVersion } from '@tiegel/engine';
import { conditions } from '@tiegel/screening';
import { inventedFacts, variedFacts } from './inventedFacts.ts';

/**
 * A search whose result must be the same on every path: a line of test/fixtures/corpus.ndjson.
 *
 * - `data`: the project's with its invented prices; the same where some elements have the data of
 *   others (`twins`); or invented numbers, few different ones (`invented`) or of any kind (`varied`),
 *   with values missing here and there.
 * - `columns`: element columns of one's own, by whose ids limits, ranking and formulas name them.
 * - `pointsPerChunk`: how finely it is cut.
 * - `part`: of a search too large to be gone through, the points of a system that it is about, from one
 *   number up to and not including another, both beginnings of lines.
 */
export interface SearchCase {
  specification: SearchSpecification;
  data: 'project' | { twins: Record<string, string> } | { invented: number } | { varied: number };
  columns?: readonly OwnColumn[];
  pointsPerChunk: number;
  part?: { system: number; from: number; until: number };
}

/** What workers are handed for a case. */
export function planOf({ specification, data, columns = [] }: SearchCase): Plan {
  const defaults = Object.values(conditions).flatMap(({ name, default: value }) =>
    value === null ? [] : [[name, value] as const],
  );
  return {
    engineVersion,
    dataVersion: 'corpus',
    specification,
    facts: columns.reduce(withOwnColumn, factsOf(effectivePool(specification.elements), data)),
    ...(columns.length > 0 && { columns: columns.map(({ values, ...column }) => column) }),
    conditions: { ...Object.fromEntries(defaults), ...specification.conditions },
  };
}

/** The facts of a pool by the kind of data. */
function factsOf(symbols: string[], data: SearchCase['data']): Facts {
  const facts = factsFor(symbols, { prices: demoPrices });
  if (data === 'project') return facts;
  if ('twins' in data) return withTwins(facts, data.twins);
  return 'varied' in data ? variedFacts(facts, data.varied) : inventedFacts(facts, data.invented);
}

/** Gives elements every value of others of the pool, so that compositions tie by algebra. */
function withTwins({ symbols, columns, pairs }: Facts, twins: Record<string, string>): Facts {
  const places = symbols.map((symbol, at) => {
    const original = symbols.indexOf(twins[symbol] ?? symbol);
    return original < 0 ? at : original;
  });
  const taken = <Value>(list: readonly Value[]): Value[] => places.map((place) => list[place]!);
  return {
    symbols,
    columns: Object.fromEntries(Object.entries(columns).map(([id, values]) => [id, taken(values)])),
    pairs: Object.fromEntries(
      Object.entries(pairs).map(([id, matrix]) => [id, taken(matrix).map((row) => taken(row))]),
    ),
  };
}
