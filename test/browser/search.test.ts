import { readFile } from 'node:fs/promises';
import type { CandidatePage, SearchView } from '@tiegel/contract';
import { parquetReadObjects } from 'hyparquet';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** The numbers of a column of the table, as far as rows are drawn, by the head's text. */
async function column(page: Page, head: RegExp): Promise<number[]> {
  const heads = await page.locator('.candidates thead th').allInnerTexts();
  const index = heads.findIndex((text) => head.test(text.replaceAll('\n', ' ')));
  const cells = await page
    .locator(`.candidates tbody tr[data-index] > :nth-child(${index + 1})`)
    .allInnerTexts();
  return cells.map((text) => Number(text.replace('−', '-').replaceAll(',', '')));
}

async function download(page: Page, link: string): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: link, exact: true }).click(),
  ]);
  return readFile(await file.path());
}

test('the demonstration is described, run, ordered, filtered, exported and read, by mouse', async () => {
  const { page, wrongs } = await site.visit('/');

  await page.getByRole('button', { name: 'As the demonstration' }).click();
  const story = page.locator('.demonstration');
  expect(await textOf(story)).toMatch(/invented/i);
  expect(await textOf(story)).toMatch(/nothing about corrosion/);
  await page.locator('.size-numbers').waitFor();
  expect(await textOf(page.locator('.size-live'))).toContain('38,494');

  await page.getByRole('button', { name: 'Start search' }).click();
  await page.waitForURL(/\/searches\/[\w-]+$/);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  const id = page.url().split('/').at(-1)!;
  const search = await site.api<SearchView>(`/searches/${id}`);
  expect(await textOf(page.locator('.search-head'))).toContain(
    `${search.counts.passed!.toLocaleString('en-US')} of 38,494`,
  );
  expect(await column(page, /^Rank/)).toEqual([...(await column(page, /^Rank/))].sort((a, b) => a - b));

  await page.getByRole('button', { name: /Density/ }).click();
  await page.waitForURL(/order=density/);
  await eventually(async () => isAscending(await column(page, /Density/))).toBe(true);
  await page.getByRole('button', { name: /Density/ }).click();
  await page.waitForURL(/direction=desc/);
  await eventually(async () => isAscending((await column(page, /Density/)).reverse())).toBe(true);

  const adding = page.getByRole('form', { name: 'Add a filter' });
  await adding.getByRole('combobox').selectOption('density');
  await adding.getByLabel('at most').fill('7,6');
  await adding.getByRole('button', { name: 'Add filter' }).click();
  await page.waitForURL(/max\.density=7\.6/);
  await page.getByText('Density ≤ 7.6 g/cm³').waitFor();
  const among = `among the ${search.kept.toLocaleString('en-US')} kept of ${search.counts.passed!.toLocaleString('en-US')} that passed`;
  expect(await textOf(page.locator('.filters'))).toContain(among);
  await eventually(async () => Math.max(...(await column(page, /Density/)))).toBeLessThanOrEqual(7.6);

  const expected = await site.api<CandidatePage>(
    `/searches/${id}/candidates?max.density=7.6&order=density&direction=desc&limit=1000`,
  );
  expect(expected.items.length).toBeGreaterThan(10);
  const densities = expected.items.map(({ quantities }) => quantities.density);

  const csv = (await download(page, 'CSV'))
    .toString()
    .split('\r\n')
    .join('\n')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const at = csv[0]!.split(',').findIndex((head) => head.includes('density'));
  expect(csv.slice(1).map((line) => Number(line.split(',')[at]))).toEqual(densities);

  const lines = (await download(page, 'NDJSON'))
    .toString()
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines.filter((line) => 'rank' in line).map((line) => line.quantities.density)).toEqual(densities);

  const parquet = await download(page, 'Parquet');
  const rows = await parquetReadObjects({ file: new Uint8Array(parquet).buffer });
  expect(rows.map((row) => row[Object.keys(row).find((key) => key.includes('density'))!])).toEqual(densities);

  const first = expected.items[0]!;
  await page.locator('.candidates tbody a').first().click();
  await page.waitForURL(/\/candidates\//);
  await page.locator('.quantity').first().waitFor();
  // The rank is looked for while the quantities stand already.
  const article = () => textOf(page.locator('article'));
  await eventually(article).toContain(`Rank ${first.rank.toLocaleString('en-US')} of`);
  expect(await article()).toContain(first.quantities.density!.toFixed(2));
  await page.locator('.quantity summary').first().click();
  expect(await textOf(page.locator('.formula').first())).toContain('Σ');
  expect(wrongs).toEqual([]);
});

test('a search that kept nothing warns of invented prices only where it asks for one', async () => {
  const specification = {
    ...{ elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] }, components: 3, fractions: { step: 10 }, keep: 0 },
    rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  };
  const plain = await site.finish(specification);
  const { page } = await site.visit(`/searches/${plain.id}`);
  const warning = page.getByText('The prices behind cost are invented');
  await page.getByText('was asked to keep none').waitFor();
  expect(await warning.count()).toBe(0);
  const priced = await site.finish({ ...specification, limits: [{ quantity: 'cost', max: 100 }] });
  await page.goto(`${site.url}/searches/${priced.id}`);
  await warning.waitFor();
});

test('a filter is offered as a limit of a new search, whose form it fills', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { page, wrongs } = await site.visit(`/searches/${id}?max.density=7.5&has=Ti`);
  await page.getByRole('link', { name: 'Search with this as a limit' }).first().click();
  await page.waitForURL(/\/ask$/);
  await page.locator('.size-numbers').waitFor();
  expect(await textOf(page.locator('.size-live'))).toContain('density ≤ 7.5 g/cm³');

  await page.goBack();
  await page.getByRole('link', { name: 'Search with all of them as limits' }).click();
  await page.waitForURL(/\/ask$/);
  await eventually(() => textOf(page.locator('.size-live'))).toContain('with Cr Fe Ni Ti');
  expect(wrongs).toEqual([]);
});

test('columns that were chosen are kept for the next result, and stand in the address', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { page } = await site.visit(`/searches/${id}`);
  await page.getByText(/^Columns \(/).click();
  expect(await textOf(page.locator('.candidates thead'))).toContain('Melting temperature');
  await page.getByRole('checkbox', { name: /^Melting temperature/ }).uncheck();
  await page.waitForURL(/columns=/);
  expect((await textOf(page.locator('.candidates thead'))).includes('Melting temperature')).toBe(false);
  await page.goto(`${site.url}/searches/${id}`);
  await page.locator('.candidates thead').waitFor();
  expect((await textOf(page.locator('.candidates thead'))).includes('Melting temperature')).toBe(false);
});

test('scrolling fetches the following pages of a long table', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id, kept } = await site.finish({ ...specification, limits: [], keep: 6000 });
  expect(kept).toBeGreaterThanOrEqual(6000);
  const { page, wrongs } = await site.visit(`/searches/${id}`);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  const drawn = await page.locator('.candidates tbody tr[data-index]').count();
  expect(drawn).toBeLessThan(80);
  // The table ends with the rows that are there, so the way to row 600 leads over several pages.
  await eventually(async () => {
    await page.locator('.table-scroll').evaluate((element) => element.scrollTo(0, 600 * 38));
    return page.locator('tr[data-index="600"]').count();
  }).toBe(1);
  expect(await textOf(page.locator('tr[data-index="600"] td').first())).toBe('601');

  await page.getByLabel('Start at row').fill('2000');
  await page.getByRole('button', { name: 'Go' }).click();
  await page.waitForURL(/at=1999/);
  await eventually(() => textOf(page.locator('tr[data-index="0"] td').first())).toBe('2,000');
  expect(wrongs).toEqual([]);
});

function isAscending(values: readonly number[]): boolean {
  return values.length > 5 && values.every((value, index) => index === 0 || value >= values[index - 1]!);
}

test('the end of a search is told on whatever page the tab shows, once, and by the browser where that is allowed', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  // Held back until somebody looks at another page.
  const { id } = await site.api<{ id: string }>('/searches?priority=last', {
    ...specification,
    name: 'Overnight',
    fractions: { step: 1, min: 5, max: 35 },
  });
  await site.api(`/searches/${id}/pause`, {});
  const { page, wrongs } = await site.visit(`/searches/${id}`, { permissions: ['notifications'] });
  await page.getByRole('button', { name: 'Resume' }).waitFor();
  await page.getByRole('link', { name: 'Evidence' }).click();
  await page.getByRole('heading', { name: 'Evidence' }).waitFor();
  await page.evaluate(`(() => {
    window.told = [];
    window.Notification = class { static permission = 'granted'; constructor(title, { body }) { window.told.push(title + ' ' + body); } };
    Object.defineProperty(document, 'visibilityState', { get: () => 'hidden' });
  })()`);
  expect(await page.getByText('has ended').count()).toBe(0);
  await site.api(`/searches/${id}/cancel`, {});
  await page.getByText('“Overnight” has ended.').waitFor();
  expect(await page.evaluate('window.told')).toEqual(['“Overnight” It was cancelled.']);
  // A reload does not lose it; who went there has read it.
  await page.reload();
  await page.getByText('“Overnight” has ended.').waitFor();
  await page.getByRole('link', { name: 'Look at it' }).click();
  await page.waitForURL(`**/searches/${id}`);
  await eventually(() => page.getByText('has ended').count()).toBe(0);
  expect(wrongs).toEqual([]);
});
