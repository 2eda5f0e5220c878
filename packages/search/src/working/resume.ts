import { decodeOutcome, problem, type SearchSpecification, usualSchedule } from '@tiegel/contract';
import { addOutcome, emptyOutcome, engineVersion, rankingOf } from '@tiegel/engine';
import { MERGED, type SearchRecord, type Store } from '@tiegel/store';
import { chunkLine } from './chunkLine.ts';
import { recentRate } from './recentRate.ts';
import type { Underway } from './underway.ts';

/**
 * Takes up a search where the ledger says it stands: at its first chunk when it is new, at its
 * unfinished chunks after a pause or a crash. Throws plan/engine-version for a search that another
 * engine version planned: its outcomes and ours do not belong together.
 */
export function resume(record: SearchRecord, store: Store): Underway {
  const { id, number, systems, bestSoFar } = record;
  const plan = store.searches.plan(number);
  if (plan.engineVersion !== engineVersion) {
    throw problem('plan/engine-version', { planned: plan.engineVersion, here: engineVersion });
  }
  return {
    ...{ id, number, systems, bestSoFar, plan, ranking: rankingOf(plan.specification) },
    ...taken(plan.specification, number, store),
    unfinished: store.ledger.unfinishedCount(number),
    chunks: chunkLine(store.ledger, number),
    inFlight: new Map(),
    announced: false,
    earlierSeconds: record.activeSeconds,
    since: null,
    rate: recentRate(),
    scored: { points: 0, seconds: 0 },
    schedule: record.schedule ?? usualSchedule,
    heldBy: record.reason,
    stop: new AbortController(),
    complete: Promise.withResolvers(),
  };
}

/** What the outcomes kept so far merge to. */
function taken(
  specification: SearchSpecification,
  number: number,
  { ledger }: Store,
): Pick<Underway, 'outcome' | 'loose'> {
  const ranking = rankingOf(specification);
  let outcome = emptyOutcome(specification.limits.length, specification.tally);
  const loose = { bytes: 0, count: 0 };
  for (let next = ledger.outcomeAfter(number, null); next; next = ledger.outcomeAfter(number, next.ordinal)) {
    outcome = addOutcome(outcome, decodeOutcome(next.bytes), ranking);
    if (next.ordinal === MERGED) continue;
    loose.bytes += next.bytes.byteLength;
    loose.count += 1;
  }
  return { outcome, loose };
}
