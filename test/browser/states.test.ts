import type { SearchView } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** Some 10¹⁰ grid points: minutes of work. */
const long = {
  name: 'A long one',
  elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Ti', 'V', 'W', 'Zr'] },
  components: { min: 7, max: 8 },
  fractions: { step: 2 },
  limits: [{ quantity: 'density', max: 8 }],
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
};

test('a list without searches says how to begin', async () => {
  const { page, wrongs } = await site.visit('/searches');
  await page.getByText('No search has been asked here yet.').waitFor();
  await page.getByRole('link', { name: 'Describe one' }).click();
  await page.locator('.card').first().waitFor();
  expect(wrongs).toEqual([]);
});

test('a search that runs tells how far it is, is paused, resumed and cancelled, and says what limits leave so far', async () => {
  const { id } = await site.api<{ id: string }>('/searches', long);
  const { page, wrongs } = await site.visit(`/searches/${id}`);
  const line = page.locator('.progress');
  await eventually(() => textOf(line)).toMatch(
    /[1-9][\d,]* of [\d,]+ compositions tested · [\d,]+ a second · about .+ left/,
  );
  await eventually(() => page.title()).toMatch(/^(?:< )?\d+(?:\.\d+)? % A long one/);
  expect(await textOf(page.locator('.limit-table'))).toMatch(/tested so far/);

  await page.getByRole('button', { name: 'Pause' }).click();
  await line.getByText('Paused').first().waitFor();
  expect((await site.api<SearchView>(`/searches/${id}`)).state).toBe('paused');
  await page.getByRole('button', { name: 'Resume' }).click();
  await line.getByText('Running').first().waitFor();

  await page.goto(`${site.url}/searches`);
  await eventually(() => textOf(page.locator('.search-line'))).toMatch(/▶ Running.*tested/);
  await page.getByRole('link', { name: 'A long one' }).click();
  await page.getByRole('button', { name: 'Cancel search …' }).click();
  await page.getByRole('button', { name: 'Cancel the search' }).click();
  await page.getByText('has no candidates, since the best might be among the rest').waitFor();
  await page.getByRole('link', { name: 'Ask it again' }).click();
  await page.waitForURL(/\/ask$/);
  await eventually(() => textOf(page.locator('.size-live'))).toContain('Seven or eight of Al Co Cr');
  expect(wrongs).toEqual([]);
});

test('progress comes by events, without asking', async () => {
  const { id } = await site.api<{ id: string }>('/searches', long);
  const { page } = await site.visit('/nowhere');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto(`${site.url}/searches/${id}`);
  const seen = new Set<string>();
  await eventually(async () => seen.add(await textOf(page.locator('.progress'))).size).toBeGreaterThan(4);
  expect(asked.filter((path) => path === `/api/v1/searches/${id}/events`)).toHaveLength(1);
  expect(asked.filter((path) => path === `/api/v1/searches/${id}`)).toHaveLength(1);
  await site.api(`/searches/${id}/cancel`, {});
});

test('where no stream of events comes through, the page asks again by itself', async () => {
  const { id } = await site.api<{ id: string }>('/searches', long);
  const { page } = await site.visit('/searches');
  await page.route('**/events', (route) => route.abort());
  await page.goto(`${site.url}/searches/${id}`);
  const tested = async () =>
    Number((await textOf(page.locator('.progress'))).match(/([\d,]+) of/)?.[1]?.replaceAll(',', ''));
  await eventually(tested).toBeGreaterThan(0);
  const before = await tested();
  await eventually(tested).toBeGreaterThan(before);
  await site.api(`/searches/${id}/cancel`, {});
  await page.getByText('has no candidates').waitFor();
});

test('a search that nothing passed names the limit that leaves least and leads back to the form', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  // Light elements have few valence electrons: each limit leaves something, both leave nothing.
  const limits = [
    { quantity: 'density', max: 6.5 },
    { quantity: 'valenceElectronConcentration', min: 8.2 },
  ];
  const { id, counts } = await site.finish({ ...specification, limits });
  expect(counts.passed).toBe(0);
  const { page } = await site.visit(`/searches/${id}`);
  await page.getByText('No point meets all limits.').waitFor();
  const least = Math.min(...counts.passedEach!);
  const row = page.locator('.limit-table tr', { hasText: 'leaves least' });
  expect(await textOf(row)).toContain(least.toLocaleString('en-US'));
  await page.getByRole('link', { name: 'Change the limits and ask again' }).click();
  await page.locator('.size-numbers').waitFor();
});

test('filters that leave nothing say so, and let go', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { page } = await site.visit(`/searches/${id}?max.density=1`);
  await page.getByText('None of the kept candidates meets these filters.').waitFor();
  await page.getByRole('button', { name: 'Show all that were kept' }).click();
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
});

test.each([
  ['/searches/gone', 'The search cannot be shown.'],
  ['/searches/gone/candidates/Al50Ni50', 'The candidate cannot be shown.'],
  ['/nowhere/at/all', 'There is no such page'],
])('%s says that it is not there', async (path, words) => {
  const { page, wrongs } = await site.visit(path);
  await page.getByText(words).waitFor();
  expect(wrongs).toEqual([]);
});

test('a composition that a search did not keep says so', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { page } = await site.visit(`/searches/${id}/candidates/Al50Ni50`);
  await page.getByRole('status').filter({ hasText: 'Not among the kept candidates of the search' }).waitFor();
});

test('while an answer is late, the page says what it waits for', async () => {
  const { page } = await site.visit('/nowhere');
  let answer = () => {};
  const late = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route('**/api/v1/elements', async (route) => {
    await late;
    await route.continue();
  });
  await page.goto(`${site.url}/ask`);
  await page.getByText('Fetching elements and quantities …').waitFor();
  answer();
  await page.locator('.card').first().waitFor();
});

test('a server that does not answer is announced, what was entered stays, and all goes on when it is back', async () => {
  const { page } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.size-numbers').waitFor();

  await site.kill();
  await page.getByLabel('Elements in an alloy: from').fill('6');
  await page.getByText('counting goes on when the server answers').waitFor();
  await page.locator('.banners').getByText('The server does not answer').waitFor();
  await page.getByRole('button', { name: 'Start search' }).click();
  await page.getByText('Whether the search was started is not known; what you entered is kept.').waitFor();

  await site.revive();
  await eventually(() => page.locator('.banners .note-danger').count()).toBe(0);
  await eventually(() => textOf(page.locator('.size-live'))).toContain('Six of Al Cr');
  await page.getByRole('button', { name: 'Start search' }).click();
  await page.waitForURL(/\/searches\//);
});

test('what has no answer is said once, however often the page asks again', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { page } = await site.visit(`/searches/${id}`);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  await page.evaluate(`(() => {
    window.alerts = 0;
    const isAlert = (node) => node.nodeType === 1 && (node.matches('[role=alert]') || node.querySelector('[role=alert]') !== null);
    const count = (records) => { for (const { addedNodes } of records) window.alerts += [...addedNodes].filter(isAlert).length; };
    new MutationObserver(count).observe(document.body, { subtree: true, childList: true });
  })()`);
  let asked = 0;
  await page.route('**/candidates?**', (route) => {
    asked += 1;
    return route.abort();
  });
  await page.getByRole('button', { name: /Density/ }).click();
  await page.getByText('The rows that are asked for cannot be shown.').waitFor();
  await eventually(() => asked).toBeGreaterThan(2);
  expect(await page.evaluate('window.alerts')).toBe(1);
  await page.unroute('**/candidates?**');
  await eventually(() => page.getByText('cannot be shown').count()).toBe(0);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
});

test('a part of the page whose code cannot be fetched says so, the form stays, and loading again brings it', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/Thumbs*.js', (route) => route.abort());
  await page.goto(`${site.url}/ask`);
  await page.locator('.card').first().waitFor();
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.getByText('A part of this page could not be fetched').first().waitFor();
  await page.getByLabel('Elements in an alloy: from').fill('6');
  await page.unroute('**/Thumbs*.js');
  await page.getByRole('button', { name: 'Load again' }).first().click();
  await page.getByRole('slider').first().waitFor();
  expect(await page.getByLabel('Elements in an alloy: from').inputValue()).toBe('6');
});

test('the page of a running search outlives a crash of the server and follows the search on', async () => {
  const { id } = await site.api<{ id: string }>('/searches', long);
  const { page } = await site.visit(`/searches/${id}`);
  const tested = async () =>
    Number((await textOf(page.locator('.progress'))).match(/([\d,]+) of/)?.[1]?.replaceAll(',', ''));
  await eventually(tested).toBeGreaterThan(0);
  await site.kill();
  await page.locator('.banners').getByText('The server does not answer').waitFor();
  const before = await tested();
  await site.revive();
  await eventually(tested).toBeGreaterThan(before);
  await eventually(() => page.locator('.banners .note-danger').count()).toBe(0);
  await site.api(`/searches/${id}/cancel`, {});
  await page.getByText('has no candidates').waitFor();
});

test('a start whose answer was lost starts one search, not two', async () => {
  const { page } = await site.visit('/ask');
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.size-numbers').waitFor();
  await page.getByLabel('Name of the search').fill('Sent twice');
  let lost = 0;
  await page.route('**/api/v1/searches', async (route) => {
    if (route.request().method() !== 'POST' || lost > 0) return route.continue();
    lost += 1;
    await route.fetch();
    return route.abort();
  });
  await page.getByRole('button', { name: 'Start search' }).click();
  await page.getByText('Whether the search was started is not known').waitFor();
  await page.reload();
  await page.locator('.size-numbers').waitFor();
  await page.getByRole('button', { name: 'Start search' }).click();
  await page.waitForURL(/\/searches\//);
  const searches = await site.api<SearchView[]>('/searches');
  expect(searches.filter(({ name }) => name === 'Sent twice')).toHaveLength(1);
});

test('a page that breaks keeps the head of the site and says what is safe', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/api/v1/quantities', (route) => route.fulfill({ json: { not: 'a list' } }));
  await page.goto(`${site.url}/ask`);
  await page.getByText('This page broke.').waitFor();
  await page.getByRole('link', { name: 'Searches' }).click();
  await page.getByRole('heading', { name: 'Searches' }).waitFor();
});

test('a server that is open to the network is marked on every page', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/api/v1/health', (route) =>
    route.fulfill({ json: { status: 'running', openNetwork: true, uptimeSeconds: 1 } }),
  );
  for (const path of ['/ask', '/searches']) {
    await page.goto(site.url + path);
    await page.getByText('Anyone who reaches this address may see, start and stop every search').waitFor();
  }
});

test('an address of something that does not exist leads to the list of what does', async () => {
  const { page } = await site.visit('/nowhere');
  for (const [path, list] of [
    ['/searches/gone', '/searches'],
    ['/shortlists/gone', '/shortlists'],
    ['/melts/gone', '/melts'],
    ['/charge-sheets/C-9999', '/charge-sheets'],
  ] as const) {
    await page.goto(site.url + path);
    const link = page.getByRole('alert').getByRole('link');
    await link.waitFor();
    expect(new URL((await link.getAttribute('href'))!, site.url).pathname).toBe(list);
    expect(await textOf(page.getByRole('alert'))).not.toContain('/api/');
  }
});

test('whatever a page asked of another host would be noticed', async () => {
  const { page, wrongs } = await site.visit('/searches');
  expect(wrongs).toEqual([]);
  await page.goto('http://127.0.0.2:9/').catch(() => {});
  expect(wrongs).toEqual(['asked http://127.0.0.2:9/']);
});
