/**
 * `npx node scripts/benchPaging.ts [--kept N] [--pages N] [--json]`: starts the service on a free port
 * with a database of its own, lets it keep N candidates (10⁶), and measures what a person waits for
 * pages of 100 over loopback: ordered, far inside, and filtered on two quantities and ordered by a
 * third; with the time of storing and the most memory that the service took. Load beside it counts
 * in the times waited, hence the processor time of the service beside them.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { parseArgs } from 'node:util';

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    kept: { type: 'string', default: '1000000' },
    pages: { type: 'string', default: '40' },
  },
});
const kept = Number(values.kept);
const pages = Number(values.pages);
const log = (line: string) => console.error(line);

/** Of 1,790,712 points all pass, so that as many are kept as are asked for. */
const specification = {
  name: 'Pages of many candidates',
  elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Si', 'Ti', 'V'] },
  components: 5,
  fractions: { step: 5 },
  limits: [
    { quantity: 'density', max: 12 },
    { quantity: 'mixingEnthalpy', min: -200 },
  ],
  rank: [{ quantity: 'meltingTemperature', prefer: 'high' }],
  keep: kept,
};
/** Quantities with many values, of which those behind the first three are ordered by nobody before. */
const asked = [
  'density',
  'mixingEnthalpy',
  'meltingTemperature',
  'cost',
  'sizeMismatch',
  'lambda',
  'atomicVolume',
];

interface Service {
  process: ChildProcess;
  address: string;
}

async function started(folder: string): Promise<Service> {
  const process_ = spawn(process.execPath, ['services/api/src/main.ts'], {
    cwd: join(import.meta.dirname, '..'),
    env: { ...process.env, PORT: '0', DATA_DIR: folder, WORKERS: '2' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  for await (const part of process_.stdout!) {
    said += part;
    const address = /http:\/\/[\w.:[\]]+/.exec(said)?.[0];
    if (address) return { process: process_, address };
  }
  throw new Error(`The service ended: ${said}`);
}

/** Processor seconds of a process so far, and the most memory that it had (MB); null where the system does not tell. */
function spent(pid: number): { seconds: number; megabytes: number } | null {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
    const peak = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return { seconds: (Number(fields[11]) + Number(fields[12])) / 100, megabytes: Number(peak) / 1024 };
  } catch {
    return null;
  }
}

function millisecondsBetween(
  before: ReturnType<typeof spent>,
  after: ReturnType<typeof spent>,
): number | null {
  return before && after && Math.round(1000 * (after.seconds - before.seconds));
}

/** What is read of any answer. */
interface Answer {
  id: string;
  state: string;
  storingSeconds: number;
  counts: { points: number };
  items: { quantities: Record<string, number> }[];
}

interface Measured {
  what: string;
  median: number;
  worst: number;
  /** which page the worst was, from 1, and the processor time that went by meanwhile (ms) */
  worstPage: number;
  worstProcessor: number | null;
  processor: number | null;
}

async function measure({
  process: { pid },
  address,
}: Service): Promise<{ id: string; measured: Measured[] }> {
  const ask = async (path: string, body?: object) => {
    const answer = await fetch(`${address}/api/v1${path}`, {
      ...(body
        ? { method: 'POST', body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
        : {}),
    });
    if (!answer.ok) throw new Error(`${path}: ${await answer.text()}`);
    return (await answer.json()) as Answer;
  };
  const { id } = await ask('/searches', specification);
  while ((await ask(`/searches/${id}`)).state !== 'done') await setTimeout(200);
  const page = (query: string) => ask(`/searches/${id}/candidates?${query}`);
  const measured: Measured[] = [];

  async function timed(what: string, queries: readonly string[]): Promise<void> {
    const before = spent(pid!);
    const times: { page: number; waited: number; processor: number | null }[] = [];
    for (const [place, query] of queries.entries()) {
      const begun = spent(pid!);
      const since = performance.now();
      // Whole, but not read: that is the page's own work.
      await (await fetch(`${address}/api/v1/searches/${id}/candidates?${query}`)).arrayBuffer();
      const waited = performance.now() - since;
      times.push({ page: place + 1, waited, processor: millisecondsBetween(begun, spent(pid!)) });
    }
    const whole = millisecondsBetween(before, spent(pid!));
    times.sort((a, b) => a.waited - b.waited);
    const worst = times.at(-1)!;
    measured.push({
      ...{ what, median: times[times.length >> 1]!.waited, worst: worst.waited },
      ...{ worstPage: worst.page, worstProcessor: worst.processor },
      processor: whole && whole / queries.length,
    });
    const slow = times
      .slice(-5)
      .map(({ page, waited, processor }) => `${page}: ${waited.toFixed(1)} (${processor})`);
    log(`${what}: ${queries.length} pages; slowest, ms (processor): ${slow.toReversed().join(', ')}`);
  }
  const of = <Value>(all: readonly Value[], place: number) => all[place % all.length]!;
  const turns = Array.from({ length: pages }, (_, turn) => turn);

  await timed(
    'an order that nobody asked for yet, with its first page',
    asked.slice(3).map((id) => `order=${id}`),
  );
  await timed(
    'ordered',
    turns.map((turn) => `order=${of(asked, turn)}`),
  );
  const far = Math.floor(kept * 0.9);
  await timed(
    'row 900,000 of 10⁶, or as far inside',
    turns.map((turn) => `order=${of(asked, turn)}&at=${far}`),
  );

  const valueAt = async (quantity: string, share: number) => {
    const at = Math.min(kept - 1, Math.floor(kept * share));
    return (await page(`order=${quantity}&at=${at}&limit=1`)).items[0]!.quantities[quantity]!;
  };
  /** Ranges around the middles of two quantities, as wide as lets about so many candidates meet both. */
  async function filter(first: string, second: string, wanted: number): Promise<string> {
    let [narrow, wide] = [0, 1];
    let query = '';
    for (let step = 0; step < 18; step += 1) {
      const width = (narrow + wide) / 2;
      const ranges: string[] = [];
      for (const quantity of [first, second]) {
        const [min, max] = [
          await valueAt(quantity, 0.5 - width / 2),
          await valueAt(quantity, 0.5 + width / 2),
        ];
        ranges.push(`min.${quantity}=${min}&max.${quantity}=${max}`);
      }
      query = ranges.join('&');
      const enough = (await page(`${query}&at=${wanted - 1}&limit=1`)).items.length > 0;
      if (enough) wide = width;
      else narrow = width;
    }
    return query;
  }
  for (const [share, wanted] of [
    ['50 %', kept / 2],
    ['1 %', kept / 100],
    ['ten rows', 10],
  ] as const) {
    const queries: string[] = [];
    for (const turn of [0, 1, 2, 3]) {
      const [first, second, third] = [of(asked, turn), of(asked, turn + 2), of(asked, turn + 3)];
      const query = await filter(first, second, Math.round(wanted));
      for (const direction of ['asc', 'desc']) queries.push(`${query}&order=${third}&direction=${direction}`);
    }
    await timed(
      `filtered on two quantities, ordered by a third, ${share} kept`,
      turns.map((turn) => of(queries, turn)),
    );
  }
  return { id, measured };
}

const folder = mkdtempSync(join(tmpdir(), 'tiegel-paging-'));
const service = await started(folder);
try {
  const { id, measured } = await measure(service);
  const view = await fetch(`${service.address}/api/v1/searches/${id}`);
  const { storingSeconds, counts } = (await view.json()) as Answer;
  const report = {
    ...{ kept, points: counts.points, load: loadavg()[0], storingSeconds },
    peakMegabytes: spent(service.process.pid!)?.megabytes ?? null,
    measured,
  };
  const shown = (value: number | null) => (value === null ? '' : value.toFixed(1));
  const table = [
    `${kept} candidates of ${counts.points} points; stored in ${storingSeconds.toFixed(1)} s; most memory ${shown(report.peakMegabytes)} MB; load ${report.load!.toFixed(1)}.`,
    '',
    '| a page of 100, ms | median | worst | which page that was, its processor time | processor time |',
    '| --- | --- | --- | --- | --- |',
    ...measured.map(
      ({ what, median, worst, worstPage, worstProcessor, processor }) =>
        `| ${what} | ${shown(median)} | ${shown(worst)} | ${worstPage}, ${shown(worstProcessor)} | ${shown(processor)} |`,
    ),
  ];
  console.log(values.json ? JSON.stringify(report, null, 2) : table.join('\n'));
} finally {
  service.process.kill('SIGTERM');
  await once(service.process, 'exit');
  rmSync(folder, { recursive: true, force: true });
}
