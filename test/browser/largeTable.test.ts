import type { CandidatePage, SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { largeResult } from '../fixtures/largeResult.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

/** TABLE_ROWS=1000000 runs this at the size that the program is meant for; scripts/frames.ts measures it. */
const rows = Number(process.env.TABLE_ROWS ?? 60_000);
let site: Site;
let search: SearchView;
beforeAll(async () => {
  let id = '';
  site = await openSite((dataFolder) => {
    id = largeResult(dataFolder, rows);
  });
  search = await site.api<SearchView>(`/searches/${id}`);
}, 300_000);
afterAll(() => site?.close());

const open = (address = '') => site.visit(`/searches/${search.id}${address}`);
const drawn = '.candidates tbody tr[data-index]';

test('of very many rows only those in sight are drawn, and any of them is reached by its number', async () => {
  const { page, wrongs } = await open();
  await page.locator(drawn).first().waitFor();
  expect(await page.locator(drawn).count()).toBeLessThan(80);
  expect(await page.locator('.candidates').getAttribute('aria-rowcount')).toBe(String(rows + 1));
  await page.getByLabel('Start at row').fill(String(rows - 5));
  await page.getByRole('button', { name: 'Go' }).click();
  await page.locator(`tr[aria-rowindex="${rows + 1}"]`).waitFor();
  // Rows of the place before stay drawn until the scroll has settled.
  await eventually(() => page.locator(drawn).count()).toBe(6);
  expect(wrongs).toEqual([]);
});

test('the server sorts and filters; the page shows what it answers and how many there are', async () => {
  const { page } = await open('?has=Al,Co&without=V&order=cost&direction=desc');
  await page.locator(drawn).first().waitFor();
  const path = `/searches/${search.id}/candidates?has=Al,Co&without=V&order=cost&direction=desc&limit=3`;
  const { items } = await site.api<CandidatePage>(path);
  const ranks = await page.locator(`${drawn} td:first-child`).allTextContents();
  expect(ranks.slice(0, 3).map((text) => Number(text.replaceAll(',', '')))).toEqual(
    items.map(({ rank }) => rank),
  );
  const { meeting } = await site.api<{ meeting: number }>(
    `/searches/${search.id}/values?has=Al,Co&without=V&limit=1`,
  );
  await page
    .getByText(
      `${meeting.toLocaleString('en-US')} of the ${rows.toLocaleString('en-US')} kept meet all filters.`,
    )
    .waitFor();
  await eventually(() => page.locator('.candidates').getAttribute('aria-rowcount')).toBe(String(meeting + 1));
});

test('very many points are drawn as cells, which the figure says, and can be walked all the same', async () => {
  const { page, wrongs } = await open('?view=scatter&x=density&y=omega&colour=none');
  await page.locator('.scatter svg .axis').first().waitFor();
  await eventually(() => textOf(page.locator('.scatter .legend'))).toContain('Candidates in a cell');
  expect(await textOf(page.locator('figcaption'))).toContain('Cells show how many candidates lie there.');
  await page.locator('.scatter-stage').focus();
  await page.keyboard.press('Home');
  expect(await page.locator('.scatter-stage').getAttribute('aria-valuetext')).toMatch(/^rank 1: /);
  await page.keyboard.press('ArrowRight');
  expect(await page.locator('.scatter-stage').getAttribute('aria-valuetext')).not.toMatch(/^rank 1: /);
  expect(wrongs).toEqual([]);
});

test('while a new order is made the page says so, keeps the rows of before, and leads back to them', async () => {
  const { page, wrongs } = await open();
  await page.locator(drawn).first().waitFor();
  const first = await textOf(page.locator(drawn).first());
  // The order is not answered until the test lets it be.
  let answer = () => {};
  const may = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route(/candidates\?.*order=lambda/, async (route) => {
    await may;
    await route.continue().catch(() => undefined);
  });
  // How far it is, as the server tells it of an order that takes long enough to be asked for.
  await page.route('**/orders', (route) =>
    route.fulfill({
      json: [
        { order: 'lambda', direction: 'asc', share: 0.4 },
        { order: 'lambda', direction: 'desc', share: 0.4 },
      ],
    }),
  );
  const head = page.locator('.candidates thead').getByRole('button', { name: /Entropy–size ratio/ });
  if ((await head.count()) === 0) await page.goto(`${page.url()}?columns=lambda`);
  await head.click();
  const said = page.locator('.selecting');
  await said.waitFor();
  expect(await textOf(said)).toMatch(
    new RegExp(
      `Putting ${rows.toLocaleString('en-US')} rows in order by entropy–size ratio, (low|high)est first`,
    ),
  );
  expect(await textOf(page.locator(drawn).first())).toContain(first.slice(0, 4));
  await eventually(() => textOf(said)).toMatch(/\d s/);
  expect(await said.getByRole('progressbar').getAttribute('value')).toBe('0.4');
  await said.getByRole('button', { name: 'Keep what was shown' }).click();
  await eventually(() => said.count()).toBe(0);
  expect(page.url()).not.toContain('order=lambda');
  await head.click();
  await said.waitFor();
  answer();
  await eventually(() => said.count()).toBe(0);
  const { items } = await site.api<CandidatePage>(
    `/searches/${search.id}/candidates${new URL(page.url()).search}&limit=1`,
  );
  await eventually(() => textOf(page.locator(`${drawn} td:first-child`).first())).toBe(
    items[0]!.rank.toLocaleString('en-US'),
  );
  expect(wrongs).toEqual([]);
});
