import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { childProcess } from '../../../test/fixtures/childProcess.ts';
import { preparedFor } from '../../engine/bench/compare.ts';
import { compiler, plainLoop } from '../../engine/bench/plainLoop.ts';
import type { Command } from './commands.ts';

/** What `tiegel search --json` took as a process of its own: medians over the rounds. */
export interface FreshRun {
  command: string;
  points: number;
  /** From start to end of the process, s on the clock. */
  wall: number;
  /** `seconds` and `preparationSeconds` of its answer. */
  seconds: number;
  preparation: number;
  /** Processor time of all its threads, s. */
  processor: number;
  /** The most memory that it had (VmHWM), MB of 10^6 bytes. */
  memory: number;
  /** Processor time that the plain loop needs for as many points, s; null without a compiler, and for quantities that it does not know. */
  plain: number | null;
}

const main = join(import.meta.dirname, '../../../services/cli/src/main.mjs');
const lookEveryMs = 20;

/** Runs commands one after the other, the plain loop between them. */
export async function freshRuns(
  commands: readonly Command[],
  rounds: number,
  log: (line: string) => void,
): Promise<FreshRun[]> {
  const runs: FreshRun[] = [];
  for (const command of commands) {
    const list: FreshRun[] = [];
    for (let round = 0; round < rounds; round += 1) list.push(await freshRun(command));
    const median = (of: (run: FreshRun) => number) =>
      list.map(of).toSorted((one, other) => one - other)[Math.floor(rounds / 2)]!;
    runs.push({
      ...list[0]!,
      ...{ wall: median((run) => run.wall), seconds: median((run) => run.seconds) },
      ...{ preparation: median((run) => run.preparation), processor: median((run) => run.processor) },
      memory: Math.max(...list.map((run) => run.memory)),
      plain: list[0]!.plain === null ? null : median((run) => run.plain!),
    });
    log(
      `${command.name}: ${runs.at(-1)!.seconds.toFixed(2)} s, whole command ${runs.at(-1)!.wall.toFixed(2)} s`,
    );
  }
  return runs;
}

async function freshRun(command: Command): Promise<FreshRun> {
  const folder = mkdtempSync(join(tmpdir(), 'tiegel-bench-'));
  try {
    const [file, into] = [join(folder, 'search.json'), join(folder, 'found.json')];
    writeFileSync(file, JSON.stringify(command.specification));
    const start = performance.now();
    // Through a shell into a file: an answer of many candidates is not to wait for this process.
    const words = [process.execPath, main, 'search', file, '--json', '--workers', String(command.workers)];
    const running = childProcess('/bin/sh', ['-c', 'exec "$@" > "$0"', into, ...words]);
    const ended = running.ended.then(({ code }) => ({ code, wall: (performance.now() - start) / 1000 }));
    let last = { memory: 0, processor: 0 };
    while (running.alive()) {
      last = statusOf(running.pid) ?? last;
      await Promise.race([ended, setTimeout(lookEveryMs)]);
    }
    const { code, wall } = await ended;
    if (code !== 0) throw new Error(`${command.name} ended with ${code}:\n${running.output()}`);
    const { counts, seconds, preparationSeconds } = JSON.parse(readFileSync(into, 'utf8'));
    return {
      ...{ command: command.name, points: counts.points, wall, seconds, preparation: preparationSeconds },
      ...last,
      plain: plainSeconds(command, counts.points),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Null once the process has ended. */
function statusOf(pid: number): { memory: number; processor: number } | null {
  try {
    const kilobytes = Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]);
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1)!.split(' ');
    if (Number.isNaN(kilobytes)) return null;
    return { memory: (kilobytes * 1024) / 1e6, processor: (Number(fields[11]) + Number(fields[12])) / 100 };
  } catch {
    return null;
  }
}

function plainSeconds({ name, specification, sample }: Command, points: number): number | null {
  const c = compiler();
  if (c === null || sample === null) return null;
  const workload = { name, specification, sample, reference: { oneIn: 1, points: 0 } };
  const loop = plainLoop(c.name, preparedFor(workload), sample);
  const { seconds, digest } = loop.run();
  loop.remove();
  return (seconds * points) / digest.points;
}
