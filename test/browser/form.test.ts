import type { SearchView, Size } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

async function formOf(options = {}): Promise<{ page: Page; wrongs: string[] }> {
  const visit = await site.visit('/ask', options);
  await visit.page.locator('.card').first().waitFor();
  return visit;
}

async function asDemonstration(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.size-numbers').waitFor();
}

const panel = (page: Page) => page.locator('.size-live');

test('the size follows what is typed, with the numbers that the API counts', async () => {
  const { page, wrongs } = await formOf();
  await asDemonstration(page);
  await page.getByLabel('Elements in an alloy: from').fill('6');
  await eventually(() => textOf(panel(page))).toContain('Six of Al Cr');
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const size = await site.api<Size>('/count', { ...specification, components: 6 });
  expect(await textOf(panel(page))).toContain(size.points.toLocaleString('en-US'));
  await page.getByLabel('Step of the grid').selectOption('2.5');
  await eventually(() => textOf(panel(page))).toContain('steps of 2.5');
  await page.getByLabel('Equal shares only').check();
  await eventually(() => textOf(panel(page))).toContain('in equal shares');
  expect(wrongs).toEqual([]);
});

test('a reload keeps the form', async () => {
  const { page } = await formOf();
  await asDemonstration(page);
  await page.getByLabel('Name of the search').fill('Half done');
  await page.getByLabel('Aluminium at most, at.%').fill('12,5');
  await page.getByRole('button', { name: 'Add a limit' }).click();
  await page.getByLabel('Limit 6: quantity').selectOption('omega');
  await page.reload();
  await page.locator('.size-numbers').waitFor();
  expect(await page.getByLabel('Name of the search').inputValue()).toBe('Half done');
  expect(await page.getByLabel('Aluminium at most, at.%').inputValue()).toBe('12,5');
  expect(await page.getByLabel('Limit 6: quantity').inputValue()).toBe('omega');
  expect(await page.getByLabel('Cobalt in an alloy').inputValue()).toBe('forbid');
});

test('what is wrong stands at its field and is announced, all of it at once, and leads there', async () => {
  const { page, wrongs } = await formOf();
  await asDemonstration(page);
  const least = page.getByLabel('Chromium at least, at.%');
  await least.fill('40');
  await page.getByLabel('Chromium at most, at.%').fill('30');
  const keep = page.getByLabel('The best of all');
  await keep.fill('2000000');
  await page.getByLabel('and the best of each system').fill('few');
  await eventually(() => textOf(panel(page))).toContain('3 things to mend');
  expect(await panel(page).getAttribute('aria-live')).toBe('polite');

  expect(await keep.getAttribute('aria-invalid')).toBe('true');
  const words = await textOf(page.locator(`#${await keep.getAttribute('aria-describedby')}`));
  expect(words).toMatch(/2,000,000.*1,000,000/s);
  expect(await textOf(panel(page))).toContain(words);
  expect(await textOf(page.locator('.pool-faults'))).toMatch(/30.*40|40.*30/s);

  await panel(page).getByRole('link', { name: words }).click();
  expect(await page.evaluate('document.activeElement.id')).toBe(await keep.getAttribute('id'));
  const before = page.url();
  await page.getByRole('button', { name: 'Start search' }).click();
  expect(page.url()).toBe(before);

  await keep.fill('2000');
  await page.getByLabel('and the best of each system').fill('3');
  await page.getByLabel('Chromium at most, at.%').fill('');
  await least.fill('');
  await page.locator('.size-numbers').waitFor();
  expect(await keep.getAttribute('aria-invalid')).toBeNull();
  expect(wrongs).toEqual([]);
});

test('a number that could be two is asked back; a reader of German types and reads commas', async () => {
  const { page } = await formOf({ locale: 'de-DE' });
  await asDemonstration(page);
  expect(await textOf(panel(page))).toContain('38.494');
  const density = page.getByLabel('at most', { exact: true }).nth(1);
  expect(await density.inputValue()).toBe('8');
  await density.fill('7,5');
  await eventually(() => textOf(panel(page))).toContain('density ≤ 7,5 g/cm³');
  await density.fill('7.125');
  await eventually(() => textOf(panel(page))).toContain('“7.125” could mean 7125 or 7,125');
  await density.fill('7.5');
  await eventually(() => textOf(panel(page))).toContain('density ≤ 7,5 g/cm³');
});

test('ranking by Ω says why that is a bad idea', async () => {
  const { page } = await formOf();
  await page.getByLabel('Ranking 1: quantity').selectOption('omega');
  expect(await textOf(page.locator('.ask-rows .note-warning'))).toMatch(/bad ranking/);
});

test('a specification is put in as JSON after the server has checked it, and what stood there can be brought back', async () => {
  const { page } = await formOf();
  await page.getByText('The specification as JSON').click();
  const text = page.locator('#specification-text');

  await text.fill('{ "elements": ');
  await page.getByText('The text is not JSON').waitFor();
  await text.fill(
    '{ "elements": { "pool": ["Al", "Fe", "Ni"] }, "components": 3, "fractions": { "stp": 5 }, "rank": [] }',
  );
  await eventually(() => textOf(page.locator('.json'))).toMatch(/stp.*The form is left as it is until/s);
  expect(await page.locator('.card[aria-pressed="true"]').count()).toBe(0);

  await text.fill(
    JSON.stringify({
      elements: { pool: ['Al', 'Fe', 'Ni'] },
      components: 3,
      fractions: 'equimolar',
      rank: [{ quantity: 'density', prefer: 'low' }],
    }),
  );
  await eventually(() => page.locator('.card[aria-pressed="true"]').count()).toBe(3);
  await asDemonstration(page);
  await page.getByRole('button', { name: 'Bring back what stood there' }).click();
  await eventually(() => textOf(panel(page))).toContain('Three of Al Fe Ni, in equal shares');
});

test('hazards of what is picked are shown, and the prices say that they are invented until others are put in', async () => {
  const { page, wrongs } = await formOf();
  await asDemonstration(page);
  expect(await textOf(page.locator('.pool'))).toMatch(/carcinogenic dust or fume/);
  expect(await textOf(page.locator('.ask-form'))).toMatch(/follow the safety data sheets/);
  const note = page.locator('.price-note');
  expect(await textOf(note)).toMatch(/invented/);

  await note.getByText('Use your own prices').click();
  await note.getByRole('link', { name: 'Bring in a price list' }).click();
  await page
    .getByLabel('Rows as CSV')
    .fill('symbol,pricePerKilogram,currency,date,source\nFe,1.5,NOK,2026-03-01,a quotation\n');
  await page.getByRole('button', { name: 'Store the rows' }).click();
  await page.waitForURL(/\/data\/imports\/\d+$/);
  await page.getByRole('navigation').getByRole('link', { name: 'Ask', exact: true }).first().click();
  await note.getByText('Prices: your list, NOK per kg, newest entry 2026-03-01.').waitFor();
  await note.getByText('Use your own prices').click();
  // Cost is limited, and the list has no price of the other elements.
  await eventually(() => textOf(panel(page))).toMatch(/to mend/);
  await page.getByRole('button', { name: 'Go back to the demonstration prices' }).click();
  await note.getByText(/invented/).waitFor();
  expect(wrongs).toEqual([]);
});

test('hours and priority are chosen before the start, survive a reload, and the search begins with them', async () => {
  const { page, wrongs } = await formOf({ timezoneId: 'Asia/Tokyo' });
  await asDemonstration(page);
  const panelOfWhen = page.locator('details:has(> summary:text("Worked on at any time"))');
  await panelOfWhen.locator('summary').click();
  await page.getByLabel('Only between two times of day').check();
  expect(await page.getByLabel('by the clock of').inputValue()).toBe('Asia/Tokyo');
  // An hour that is not now: from two hours on, for one hour.
  const clock = (hours: number) => new Date(Date.now() + hours * 3600e3).toISOString().slice(11, 16);
  await page.getByLabel('Works from').fill(clock(2));
  await page.getByLabel('until', { exact: true }).fill(clock(3));
  await page.getByLabel('by the clock of').fill('Nowhere');
  await page.getByText('No time zone is called “Nowhere”').waitFor();
  const start = page.getByRole('button', { name: /^Start search/ });
  expect(await start.getAttribute('aria-disabled')).toBe('true');
  await page.getByLabel('by the clock of').fill('UTC');
  await page.getByLabel('Among several searches it goes').selectOption('first');
  await page.reload();
  await page.locator('.size-numbers').waitFor();
  const said = `Start search, from ${clock(2)} to ${clock(3)}, before all others`;
  await page.getByRole('button', { name: said, exact: true }).click();
  await page.waitForURL(/\/searches\/[\w-]+$/);
  const view = await site.api<SearchView>(`/searches/${page.url().split('/').at(-1)}`);
  expect(view.schedule).toEqual({
    hours: { zone: 'UTC', from: clock(2), to: clock(3) },
    priority: 'first',
  });
  expect(view.state).toBe('waiting');
  expect(wrongs).toEqual([]);
});
