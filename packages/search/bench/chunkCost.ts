import { readFileSync } from 'node:fs';
import { demoPrices } from '@tiegel/elements';
import { planChunks } from '@tiegel/engine';
import { checkSearch } from '../src/asking/check.ts';
import { DEFAULT_MAX_POINTS } from '../src/index.ts';
import { type Carrier, processes, threads } from './carriers.ts';
import { runSearch, systemsOf } from './runSearch.ts';

/** Processor time that handing out a chunk and taking its outcome costs, ms a chunk; null where there is no such process. */
export interface ChunkCost {
  carrier: string;
  chunks: number;
  /** the thread that hands out and collects: it limits how many chunks a second there can be */
  collector: number;
  /** a worker process beside its scoring thread, and that thread */
  worker: number | null;
  redis: number | null;
  /** time on the clock from the first chunk to the last outcome */
  elapsed: number;
}

/** So short that what they cost is nearly all of it. */
const pointsPerChunk = 1000;
const poolSize = 12;
/** Linux counts the time of a process in hundredths of a second. */
const msPerTick = 10;

/** A search cut into thousand-point chunks, on one thread and through one worker process: processor time, which other work on the machine hardly changes. */
export async function chunkCosts(): Promise<ChunkCost[]> {
  const carriers = [threads(1), await processes(1)].filter((one) => one !== null);
  const costs: ChunkCost[] = [];
  for (const carrier of carriers) {
    await runSearch(carrier, systemsOf(8, 5), { pointsPerChunk });
    costs.push(await costOf(carrier));
    await carrier.close();
  }
  return costs;
}

async function costOf(carrier: Carrier): Promise<ChunkCost> {
  const { name, workerPids, redisPid, workers } = carrier;
  const request = systemsOf(poolSize, 5);
  const { grid } = checkSearch(request, { prices: demoPrices }, DEFAULT_MAX_POINTS);
  const chunks = planChunks(grid, { pointsPerChunk, workers }).length;
  const before = [...workerPids, ...(redisPid === null ? [] : [redisPid])].map(ticksOf);
  // The calibration runs on this thread, too: it is measured alone and taken away.
  const calibration = await ownMs(
    async () => void (await runSearch(carrier, request, { pointsPerChunk: 1e9 })),
  );
  const start = performance.now();
  const all = await ownMs(async () => void (await runSearch(carrier, request, { pointsPerChunk })));
  const elapsed = (performance.now() - start) / chunks;
  const after = [...workerPids, ...(redisPid === null ? [] : [redisPid])].map(ticksOf);
  const spent = after.map((ticks, at) => ((ticks - before[at]!) * msPerTick) / chunks);
  return {
    ...{ carrier: name, chunks, collector: (all - calibration) / chunks, elapsed },
    worker: workerPids.length > 0 ? spent[0]! : null,
    redis: redisPid === null ? null : spent.at(-1)!,
  };
}

async function ownMs(work: () => Promise<void>): Promise<number> {
  const before = process.threadCpuUsage();
  await work();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000;
}

/** User and system time of a process so far. */
function ticksOf(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1)!.split(' ');
  return Number(fields[11]) + Number(fields[12]);
}
