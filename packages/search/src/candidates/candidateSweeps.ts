import { setImmediate } from 'node:timers/promises';
import type { CandidateQuery } from '@tiegel/contract';
import { effectivePool, ProblemError } from '@tiegel/contract/terms';
import type { CandidateColumns, JoinedStore } from '@tiegel/store';
import { searchDistributions } from '../distributions/searchDistributions.ts';
import type { Searches } from '../searches.ts';
import type { Records } from '../watching/records.ts';
import { inStore } from './candidateAnswers.ts';
import { candidateSet, checkQuery } from './candidateQueries.ts';
import { elementUse } from './elementUse.ts';
import { systemsOf } from './systemsOf.ts';
import { tradeOff } from './tradeOff.ts';
import { unknownColumn } from './unknownColumn.ts';

/** So many of the best are there in every sample. */
const alwaysThere = 200;

/**
 * Answers that read all kept candidates of a search: see Searches. They read by stretches, and
 * between two of them everybody else is answered.
 */
export function candidateSweeps(
  store: JoinedStore,
  { known }: Records,
): Pick<Searches, 'values' | 'elementUse' | 'tradeOff' | 'keptSystems' | 'searchDistributions'> {
  function opened(id: string, query: CandidateQuery, quantities: readonly string[]) {
    const record = known(id);
    const { set, names } = candidateSet(record);
    checkQuery(query, record);
    checkColumns(quantities, record.columns);
    const { passed, points } = record.counts;
    return {
      record,
      set,
      query: inStore(query, names),
      quantities: quantities.map(names.of),
      among: { kept: set.kept, passed, points },
    };
  }

  return {
    async values(id, asked, quantities, limit) {
      const { set, query, quantities: stored, among } = opened(id, asked, quantities);
      const meeting = await sum(store.candidates.counts(set, query));
      const every = Math.max(1, Math.ceil(meeting / limit));
      const ranks: number[][] = [];
      const values: (number | null)[][][] = quantities.map(() => []);
      const stretches = store.candidates.values(set, query, { quantities: stored, every, best: alwaysThere });
      for await (const stretch of apart(stretches)) {
        ranks.push(stretch.ranks);
        for (const [place, column] of values.entries()) column.push(stretch.values[place]!);
      }
      return {
        quantities: [...quantities],
        ranks: ranks.flat(),
        values: values.map((column) => column.flat()),
        ...{ every, meeting, among },
      };
    },

    async elementUse(id, asked) {
      const { record, set, query, among } = opened(id, asked, []);
      const use = elementUse(effectivePool(record.specification.elements));
      const meeting = await each(
        store.candidates.values(set, query, { quantities: [], compositions: true }),
        ({ systems, parts }, at) => use.add(systems[at]!, parts[at]!),
      );
      return { elements: use.elements(), meeting, among };
    },

    async tradeOff(id, asked, quantities, prefer) {
      const { set, query, quantities: stored, among } = opened(id, asked, quantities);
      const front = tradeOff(prefer);
      const meeting = await each(
        store.candidates.values(set, query, { quantities: stored }),
        ({ ranks, values: [first, second] }, at) => front.add(first![at]!, second![at]!, ranks[at]!),
      );
      return { quantities: [...quantities], prefer: [...prefer], items: front.points(), meeting, among };
    },

    async searchDistributions(id, asked, quantities) {
      const { record, set, query, quantities: stored, among } = opened(id, asked, quantities);
      const kept = () => apart(store.candidates.values(set, query, { quantities: stored }));
      const found = await searchDistributions(store, { number: record.number, quantities, kept });
      return { ...found, among };
    },

    async keptSystems(id, asked) {
      const { set, query, among } = opened(id, asked, []);
      const systems = systemsOf();
      const meeting = await each(
        store.candidates.values(set, query, { quantities: [], compositions: true }),
        (stretch, at) => systems.add(stretch.systems[at]!, stretch.ranks[at]!),
      );
      return { systems: systems.best(), meeting, among };
    },
  };
}

/** Throws request/invalid for every quantity that the candidates do not have. */
function checkColumns(quantities: readonly string[], columns: readonly string[]): void {
  const faults = quantities
    .filter((id) => !columns.includes(id))
    .map((id) => unknownColumn(id, columns, '/quantities'));
  if (faults.length > 0) throw new ProblemError(faults);
}

/** Lets everybody else be answered before each stretch is read. */
async function* apart<Stretch>(stretches: Iterable<Stretch>): AsyncGenerator<Stretch> {
  for (const stretch of stretches) {
    yield stretch;
    await setImmediate();
  }
}

/** Shows every candidate of the stretches; returns how many there are. */
async function each(
  stretches: Iterable<CandidateColumns>,
  show: (stretch: CandidateColumns, at: number) => void,
): Promise<number> {
  let count = 0;
  for await (const stretch of apart(stretches)) {
    for (let at = 0; at < stretch.ranks.length; at += 1) show(stretch, at);
    count += stretch.ranks.length;
  }
  return count;
}

async function sum(numbers: Iterable<number>): Promise<number> {
  let total = 0;
  for await (const number of apart(numbers)) total += number;
  return total;
}
