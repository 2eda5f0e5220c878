import { setTimeout as pause } from 'node:timers/promises';
import { isDeepStrictEqual } from 'node:util';
import { until } from '../fixtures/until.ts';
import type { Installation, Part } from './installation.ts';
import { type Found, found, shareDone, startSearch, view, whenDone } from './overHttp.ts';
import { type Specification, specificationWith } from './specification.ts';

/** What is killed, and whether Redis comes back without what it had stored. */
export interface Fault {
  part: Part;
  emptied?: boolean;
}

/** A kill counts only while this share of the points is done. */
const window = { from: 0.05, to: 0.95 };
/** What starts again takes some time, in which others may score the rest: then another moment is tried. */
const mostTries = 5;

/** How long a search has to last undisturbed, if nothing else is asked (s): parts of it must be under way at any moment. */
const usualSeconds = 2;

/** A search, and what it finds when nothing is killed. */
export interface Undisturbed {
  specification: Specification;
  expected: Found;
}

/** Runs ever larger searches with nothing killed, until one lasts some seconds on this machine. */
export async function undisturbed(url: string, lasting = usualSeconds): Promise<Undisturbed> {
  for (let points = 200_000; ; ) {
    const specification = await specificationWith(points, url);
    const id = await startSearch(url, specification);
    await whenDone(url, id);
    const { progress, seconds } = await view(url, id);
    if (seconds! >= lasting) return { specification, expected: await found(url, id) };
    points = Math.max(progress.total + 1, (progress.total * 1.3 * lasting) / seconds!);
  }
}

/**
 * Runs the search, kills a part at a random moment and starts it again, and compares all that was
 * found with the undisturbed run; again, while kills land outside the window. Returns the share of the
 * points that was done at the kill. Throws when none landed in the window, when the search does not
 * finish, or when anything differs.
 */
export async function round(
  installation: Installation,
  fault: Fault,
  random: () => number,
  calm: Undisturbed,
): Promise<number> {
  const missed: string[] = [];
  while (missed.length < mostTries) {
    const { before, after, state } = await killOnce(installation, fault, random, calm);
    if (before >= window.from && after <= window.to && state !== 'done') return before;
    missed.push(`${before} before, ${after} after, ${state}`);
  }
  throw new Error(`No kill landed between 5 and 95 %: ${missed.join('; ')}.`);
}

/** The share that was done before a kill and after it, and how the search stood then. Throws as round does. */
async function killOnce(
  installation: Installation,
  { part, emptied = false }: Fault,
  random: () => number,
  { specification, expected }: Undisturbed,
): Promise<{ before: number; after: number; state: string }> {
  const id = await startSearch(installation.url(), specification);
  const least = window.from + random() * 0.65;
  await until(
    `${(least * 100).toFixed(0)} % are done`,
    async () => (await shareDone(installation.url(), id)) >= least,
    { everyMs: 20 },
  );
  // The moment is what is random here: without this every kill would follow a chunk's end.
  await pause(random() * 60);
  const before = await shareDone(installation.url(), id);
  await installation.kill(part);
  if (emptied) await installation.emptyRedis();
  if (part === 'api') await installation.restart(part);
  const after = await shareDone(installation.url(), id);
  const { state } = await view(installation.url(), id);
  if (part !== 'api') await installation.restart(part);
  await whenDone(installation.url(), id);
  const result = await found(installation.url(), id);
  if (!isDeepStrictEqual(result, expected)) {
    throw new Error(
      `The result differs after a kill of ${part} at ${before}: ${differenceOf(result, expected)}`,
    );
  }
  return { before, after, state };
}

function differenceOf(result: Found, expected: Found): string {
  if (!isDeepStrictEqual(result.counts, expected.counts)) {
    return `counts ${JSON.stringify(result.counts)} instead of ${JSON.stringify(expected.counts)}`;
  }
  const row = expected.candidates.findIndex(
    (one, index) => !isDeepStrictEqual(one, result.candidates[index]),
  );
  return row < 0
    ? `${result.candidates.length} rows instead of ${expected.candidates.length}`
    : `row ${row} is ${JSON.stringify(result.candidates[row])} instead of ${JSON.stringify(expected.candidates[row])}`;
}
