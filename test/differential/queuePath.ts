import type { Outcome, Plan } from '@tiegel/contract';
import { cutOffOf, emptyOutcome, gridOf, mergeOutcomes, rankingOf } from '@tiegel/engine';
import type { ChunkQueue, Report } from '@tiegel/queue';
import { chunksOf } from './chunksOf.ts';
import type { Path } from './paths.ts';
import type { SearchCase } from './searchCase.ts';

/** Chunks of a search under way at a time: some, so that later ones come with a cut-off. */
const underWay = 6;

/** Through a queue: threads of this process, or worker processes. */
export function queuePath(name: string, queue: ChunkQueue): Path {
  let searches = 0;
  let listener: (report: Report) => void = () => {};
  queue.onReport((report) => listener(report));

  async function run(plan: Plan, of: SearchCase): Promise<Outcome> {
    searches += 1;
    const searchId = `corpus-${process.pid}-${searches}`;
    const ranking = rankingOf(plan.specification);
    const chunks = chunksOf(gridOf(plan.specification), of);
    let merged = emptyOutcome(plan.specification.limits.length, plan.specification.tally);
    let sent = 0;
    // A report may come twice.
    const taken = new Set<number>();
    const finished = Promise.withResolvers<void>();
    const send = async () => {
      const chunk = chunks[sent];
      sent += 1;
      if (chunk) await queue.send({ searchId, chunk, attempt: 1, cutOff: cutOffOf(merged, ranking) });
    };
    listener = (report) => {
      if (report.searchId !== searchId) return;
      if (report.kind !== 'done') return finished.reject(new Error(JSON.stringify(report)));
      if (taken.has(report.ordinal)) return;
      taken.add(report.ordinal);
      merged = mergeOutcomes(merged, report.outcome, ranking);
      if (taken.size === chunks.length) finished.resolve();
      else send().catch(finished.reject);
    };
    await queue.announce(searchId, plan);
    if (chunks.length === 0) return merged;
    for (let at = 0; at < underWay; at += 1) send().catch(finished.reject);
    await finished.promise;
    await queue.withdraw(searchId);
    return merged;
  }

  return { name, run };
}
