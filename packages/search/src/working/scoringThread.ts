import { performance } from 'node:perf_hooks';
import type { Plan } from '@tiegel/contract';
import { type Prepared, prepare, scoreChunk, warmUp } from '@tiegel/engine';
import type { AnnouncedSearch, ScoringAnswer, ScoringRequest } from '@tiegel/queue';
import { handOver } from '@tiegel/queue/handOver';

/** Searches whose preparation a thread keeps: those that take turns on it, and no more. */
const keptSearches = 8;
const prepared = new Map<string, Prepared>();

/** The plan bound for scoring; made once for each search, dropped when others have pushed it out. */
function preparedFor({ searchId, plan }: AnnouncedSearch): Prepared {
  const one = prepared.get(searchId) ?? prepare(JSON.parse(Buffer.from(plan).toString('utf8')) as Plan);
  prepared.delete(searchId);
  prepared.set(searchId, one);
  for (const oldest of prepared.keys()) {
    if (prepared.size <= keptSearches) break;
    prepared.delete(oldest);
  }
  return one;
}

/** A chunk may take a second; the first one need not wait for the compiler. */
const warmUpMs = 30;

/** Binds the plan and warms its scorer up. */
export function ready(search: AnnouncedSearch): void {
  warmUp(preparedFor(search), warmUpMs);
}

/**
 * The one file that scores in a thread, for every carrier (see scoring.ts of packages/queue). What
 * it throws, above all a plan of another engine version, is reported as a failed chunk.
 */
export default function scoringThread(request: ScoringRequest): ScoringAnswer {
  const { chunk, cutOff, stop, sharedKey } = request;
  const start = performance.now();
  const stopped = () => Atomics.load(stop, 0) !== 0;
  const outcome = scoreChunk(preparedFor(request), chunk, {
    ...{ cutOff, stopped },
    ...(sharedKey && { sharedKey }),
  });
  if (outcome === null) return { kind: 'stopped' };
  const scoringSeconds = (performance.now() - start) / 1000;
  return handOver({ kind: 'done', outcome, scoringSeconds }, [outcome.best]);
}
