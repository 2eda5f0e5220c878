import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateSource.ts';
import { type Condition, condition } from './condition.ts';
import type { Connection } from './connections.ts';
import type { Ordering } from './orderings.ts';
import type { Place } from './pageKey.ts';

/** Places of an order: from `low` up to and not including `high`. */
export interface Places {
  low: number;
  high: number;
}

/** The candidates at places of an ordering, as what stands behind `from` in a select. */
export function atPlaces(set: CandidateSet, ordering: Ordering, { low, high }: Places): Condition {
  return condition(
    `candidate_place as place
       cross join candidate indexed by candidate_rank on candidate.search = ? and candidate.rank = place.rank
     where place.ordering = ? and place.place >= ? and place.place < ?`,
    ...[set.search, ordering.number, low, high],
  );
}

/** The places whose values lie in the query's ranges on the quantity that orders them. */
export function placesInRange(
  connection: Connection,
  set: CandidateSet,
  ordering: Ordering,
  query: CandidateQuery,
  quantity: string,
): Places {
  const ranges = query.ranges.filter((range) => range.quantity === quantity);
  if (ranges.length === 0) return { low: 0, high: set.kept };
  const min = Math.max(...ranges.map((range) => range.min ?? Number.NEGATIVE_INFINITY));
  const max = Math.min(...ranges.map((range) => range.max ?? Number.POSITIVE_INFINITY));
  const valueAt = reading<{ value: number }>(connection, set, ordering, `${columnOf(quantity)} as value`);
  const ascending = ordering.direction === 'asc';
  const all = { low: 0, high: ordering.valued };
  const low = firstPlace(all, valueAt, ({ value }) => (ascending ? value < min : value > max));
  const inside = ({ value }: { value: number }) => (ascending ? value <= max : value >= min);
  return { low, high: firstPlace({ ...all, low }, valueAt, inside) };
}

/** The first place behind a row, which is given by its value of the quantity that orders them and its rank. */
export function placeBehind(
  connection: Connection,
  set: CandidateSet,
  ordering: Ordering,
  quantity: string,
  row: Place,
): number {
  const rowAt = reading<Place>(connection, set, ordering, `${columnOf(quantity)} as value, candidate.rank`);
  if (row.value === null) {
    const missing = { low: ordering.valued, high: set.kept };
    return firstPlace(missing, rowAt, ({ rank }) => rank <= row.rank);
  }
  const sought = row.value;
  const sign = ordering.direction === 'asc' ? 1 : -1;
  return firstPlace({ low: 0, high: ordering.valued }, rowAt, ({ value, rank }) =>
    value === sought ? rank <= row.rank : sign * (value! - sought) < 0,
  );
}

interface Composition {
  rank: number;
  system: string;
  parts: string;
}

/** The rank of a composition in the ordering by composition, null where it is not there. */
export function rankOfComposition(
  connection: Connection,
  set: CandidateSet,
  ordering: Ordering,
  sought: Omit<Composition, 'rank'>,
): number | null {
  const rowAt = reading<Composition>(connection, set, ordering, 'candidate.rank, system, parts');
  const all = { low: 0, high: set.kept };
  const place = firstPlace(all, rowAt, ({ system, parts }) =>
    system === sought.system ? parts < sought.parts : system < sought.system,
  );
  if (place === all.high) return null;
  const found = rowAt(place);
  return found.system === sought.system && found.parts === sought.parts ? found.rank : null;
}

/** The first of the places that is not before what is sought; `high` where all are. Some 20 look-ups in 10⁶ places. */
function firstPlace<Row>(
  { low, high }: Places,
  rowAt: (place: number) => Row,
  before: (row: Row) => boolean,
) {
  let [from, to] = [low, high];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (before(rowAt(middle))) from = middle + 1;
    else to = middle;
  }
  return from;
}

function reading<Row>(
  connection: Connection,
  set: CandidateSet,
  ordering: Ordering,
  columns: string,
): (place: number) => Row {
  const { sql, values } = atPlaces(set, ordering, { low: 0, high: 0 });
  const row = connection.prepare(`select ${columns} from ${sql}`);
  return (place) => row.get(...values.slice(0, 2), place, place + 1) as Row;
}
