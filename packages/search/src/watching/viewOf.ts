import type { SearchView } from '@tiegel/contract';
import { usualSchedule } from '@tiegel/contract/terms';
import { lateQuantities } from '@tiegel/insight/late';
import { ownQuantities } from '@tiegel/screening';
import type { SearchRecord } from '@tiegel/store';
import { ownOf } from '../namedIn.ts';
import { activeSeconds, type Underway } from '../working/underway.ts';

/** A search as anybody sees it, from what is kept of it and, where this process works on it, what is known beyond. */
export function viewOf(record: SearchRecord, underway: Underway | undefined): SearchView {
  const { id, state, reason, question, specification, notices, counts, kept, bestSoFar, prices } = record;
  const { dataVersion, engineVersion, preparationSeconds, storingSeconds, createdAt, finishedAt } = record;
  const rate = state === 'running' ? (underway?.rate.perSecond(performance.now()) ?? null) : null;
  const left = record.points - counts.points;
  return {
    ...{
      id,
      name: specification.name,
      state,
      reason,
      question,
      specification,
      moreQuantities: moreQuantities(record),
      notices,
      counts,
      kept,
      bestSoFar,
      schedule: record.schedule ?? usualSchedule,
      prices,
    },
    ...{ dataVersion, engineVersion, preparationSeconds, storingSeconds, createdAt, finishedAt },
    progress: { points: counts.points, total: record.points },
    seconds: secondsOf(record, underway),
    rate,
    secondsLeft: rate === null ? null : left / rate,
  };
}

function moreQuantities({ specification, columns, ownColumns }: SearchRecord): SearchView['moreQuantities'] {
  const late = lateQuantities.filter(({ id }) => columns.includes(id));
  const own = ownQuantities(ownOf({ specification, columns: ownColumns }));
  const told = (kind: 'late' | 'own') => (quantity: (typeof late | typeof own)[number]) => {
    const { id, name, symbol, unit, notation, meaning, decimals } = quantity;
    return { id, kind, name, symbol, unit, notation, meaning, decimals };
  };
  return [...late.map(told('late')), ...own.map(told('own'))];
}

/** Null before the first chunk was handed out. */
function secondsOf(
  { state, activeSeconds: kept }: SearchRecord,
  underway: Underway | undefined,
): number | null {
  const seconds = state === 'running' && underway ? activeSeconds(underway) : kept;
  return state !== 'done' && seconds === 0 ? null : seconds;
}
