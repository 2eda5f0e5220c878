import type { ChunkQueue, Report } from '@tiegel/queue';
import type { Store } from '@tiegel/store';
import type { Watchers } from '../watching/watchers.ts';
import type { Chronicle } from './chronicle.ts';
import { collect } from './collect.ts';
import { giveBack, type Underway } from './underway.ts';

/** A chunk that failed so often is not tried again: its search fails. */
const mostFailures = 3;

/** What reports are about, and who is told of them. */
interface ReportTaker {
  /** The search of an id, where this process works on it. */
  underway(id: string): Underway | undefined;
  orEnd: Chronicle['orEnd'];
  changed: Watchers['changed'];
  /** A report was taken. */
  taken(): void;
  /** Resolves when what is reported can be written down. */
  writable(): Promise<void>;
  /** Aborted when the program ends. */
  ending: AbortSignal;
}

/**
 * Takes what workers report in the order in which it came; while another process writes reports wait, and
 * workers go on with what they have.
 */
export function takeReports(queue: ChunkQueue, store: Store, by: ReportTaker): void {
  /** What workers reported and was not taken yet. */
  const reports: Report[] = [];
  let taking = false;
  queue.onReport((one) => {
    reports.push(one);
    void takeAll();
  });

  async function takeAll(): Promise<void> {
    if (taking) return;
    taking = true;
    for (let next = reports[0]; next !== undefined; next = reports[0]) {
      if (!store.isFree()) await by.writable();
      if (by.ending.aborted) break;
      reports.shift();
      report(next);
    }
    taking = false;
  }

  function report(one: Report): void {
    const search = by.underway(one.searchId);
    if (search === undefined) return;
    by.orEnd(search, () => {
      if (one.kind === 'done') take(search, one);
      else giveBack(search, [one.ordinal]);
      if (one.kind === 'failed') countFailure(search, one);
    });
    by.taken();
  }

  function take(search: Underway, report: Extract<Report, { kind: 'done' }>): void {
    const { ordinal, outcome, scoringSeconds } = report;
    if (!collect(search, ordinal, outcome, store)) return;
    search.scored.points += outcome.points;
    search.scored.seconds += scoringSeconds;
    by.changed(search.id, 'progress');
    if (search.unfinished === 0) search.complete.resolve();
  }

  function countFailure(search: Underway, { ordinal, reason }: Extract<Report, { kind: 'failed' }>): void {
    const failures = store.ledger.countFailure(search.number, ordinal);
    if (failures < mostFailures) return;
    throw new Error(`Part ${ordinal + 1} of the search failed ${failures} times: ${reason}`);
  }
}
