/**
 * Measures in Chromium how long a table and a scatter of very many candidates keep the page from
 * drawing: the longest tasks and the longest gaps between two frames, while somebody scrolls, sorts
 * and filters. Usage: npx node scripts/frames.ts [--rows 1000000]; a million rows take a minute to lay out.
 */
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import { openSite } from '../test/browser/site.ts';
import { largeResult } from '../test/fixtures/largeResult.ts';

const { values } = parseArgs({ options: { rows: { type: 'string', default: '1000000' } } });
const rows = Number(values.rows);
const rowHeight = 38;

/** Begins to note the gaps between frames. */
const watch = `(() => {
  const noted = { frames: [], on: true };
  window.noted = noted;
  let last;
  const frame = (now) => {
    if (last !== undefined) noted.frames.push(now - last);
    last = now;
    if (noted.on) requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
})()`;
const told = '(() => { window.noted.on = false; return window.noted.frames; })()';

interface TraceEvent {
  name: string;
  pid: number;
  tid: number;
  /** microseconds of processor time */
  tdur?: number;
  args?: { name?: string };
}

/** The longest tasks of the pages' main threads, ms of processor time, longest first. */
function tasksIn(trace: Buffer): number[] {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: TraceEvent[] };
  const main = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  return traceEvents
    .filter(({ name, pid, tid }) => name.endsWith('RunTask') && main.has(`${pid} ${tid}`))
    .map(({ tdur = 0 }) => tdur / 1000)
    .sort((a, b) => b - a);
}

/**
 * Wall times, which other work on the machine lengthens, and beside them processor times, which it
 * does not: a task of n ms keeps a frame waiting n ms where nothing else runs.
 */
async function measured(page: Page, what: string, act: () => Promise<void>): Promise<void> {
  await site.browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline'] });
  await page.evaluate(watch);
  const since = performance.now();
  await act();
  // Two frames more, so that what the last act caused is drawn.
  await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
  const took = performance.now() - since;
  const frames = (await page.evaluate<number[]>(told)).sort((a, b) => b - a);
  const tasks = tasksIn(await site.browser.stopTracing());
  const rounded = (all: number[]) => all.slice(0, 3).map(Math.round).join(', ');
  console.log(
    [
      what.padEnd(36),
      `longest tasks ${rounded(tasks)} ms of processor`,
      `longest frames ${rounded(frames)} ms`,
      `${frames.length} frames in ${Math.round(took)} ms`,
    ].join('   '),
  );
}

let id = '';
const site = await openSite((dataFolder) => {
  console.error(`laying out ${rows} candidates ...`);
  id = largeResult(dataFolder, rows);
});
try {
  const { page } = await site.visit(`/searches/${id}`, { viewport: { width: 1440, height: 900 } });
  const row = (index: number) => page.locator(`tr[data-index="${index}"]`);
  const table = page.locator('.table-scroll');
  const scrollTo = (top: number) =>
    table.evaluate((element, to) => element.scrollTo(0, to), top) as Promise<void>;
  await row(0).waitFor();

  await measured(page, 'scroll through 2,000 rows', async () => {
    for (let at = 0; at < 2_000; at += 10) {
      await row(at).waitFor();
      await scrollTo(at * rowHeight);
    }
  });
  await measured(page, 'sort by a quantity that has an order', async () => {
    await page.getByRole('button', { name: /Density/ }).click();
    await page.locator('th[aria-sort="ascending"]', { hasText: 'Density' }).waitFor();
    await page.locator('[aria-busy="false"] tr[data-index="0"]').waitFor();
  });
  await measured(page, 'sort by one that has none yet', async () => {
    await page.getByRole('button', { name: /Cost/ }).first().click();
    await page.locator('th[aria-sort="ascending"]', { hasText: 'Cost' }).waitFor();
    await page.locator('[aria-busy="false"] tr[data-index="0"]').waitFor({ timeout: 120_000 });
  });
  await measured(page, 'go to a row in the middle', async () => {
    await page.getByLabel('Start at row').fill(String(rows / 2));
    await page.keyboard.press('Enter');
    await page.locator(`tr[aria-rowindex="${rows / 2 + 1}"]`).waitFor();
  });
  await measured(page, 'filter by elements', async () => {
    await page.goto(`${site.url}/searches/${id}?has=Al,Co&without=V`);
    await page.evaluate(watch);
    await row(0).waitFor();
    await page.getByText(/kept meet all filters/).waitFor({ timeout: 120_000 });
  });
  await page.goto('about:blank');
  // What is better is said, since the search itself says it of one of its quantities alone.
  await page.goto(`${site.url}/searches/${id}?better=low,low`);
  await row(0).waitFor();
  await measured(page, 'scatter of what is sampled', async () => {
    await page.getByRole('link', { name: 'Scatter' }).click();
    await page.locator('.scatter svg .front-point').first().waitFor({ timeout: 120_000 });
  });
  await measured(page, 'walk the scatter', async () => {
    await page.locator('.scatter-stage').focus();
    for (const key of ['Home', 'ArrowRight', 'ArrowDown', 'ArrowRight']) await page.keyboard.press(key);
  });
  await measured(page, 'pointer over the scatter', async () => {
    const box = (await page.locator('.scatter-stage').boundingBox())!;
    for (let step = 0; step < 40; step += 1)
      await page.mouse.move(box.x + 100 + step * 20, box.y + 150 + step * 5);
  });
  const since = performance.now();
  const asked = await Promise.all(
    ['element-use', 'systems', 'distributions'].map(async (what) => {
      await site.api(`/searches/${id}/${what}`);
      return `${what} ${Math.round(performance.now() - since)} ms`;
    }),
  );
  console.log(`answered side by side: ${asked.join(', ')}`);
} finally {
  await site.close();
}
