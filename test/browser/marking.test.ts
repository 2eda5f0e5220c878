import type { SearchView, Shortlist } from '@tiegel/contract';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeOf, turnNarrowAndDark, wideAndLight } from './axeOf.ts';
import { focusedName } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let search: SearchView;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = await site.finish({ ...specification, limits: [], keep: 400 });
});
afterAll(() => site?.close());

const boxes = (page: Page) => page.getByRole('checkbox', { name: /^Mark / });
const marked = (page: Page) => page.getByRole('region', { name: 'Marked candidates' });
const count = (page: Page) => textOf(marked(page).getByRole('status').first());

test('rows are marked by keyboard, and the marked ones compared: Back brings the marks', async () => {
  const { page, wrongs } = await site.visit(`/searches/${search.id}`);
  await boxes(page).first().waitFor();
  await page.locator('.candidates tbody a').first().focus();
  await page.keyboard.press('Space');
  await eventually(() => count(page)).toBe('1 marked');
  expect(await textOf(marked(page))).toContain('Mark one more to compare.');
  // The box is one Tab before the row's link, and arrows go on from it.
  await page.keyboard.press('Shift+Tab');
  expect(await focusedName(page)).toMatch(/^Mark /);
  await page.keyboard.press('Space');
  await eventually(() => count(page)).toBe('None marked');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Space');
  await eventually(() => count(page)).toBe('2 marked');
  expect(await boxes(page).evaluateAll((all) => all.map((one) => 'checked' in one && one.checked))).toEqual(
    await boxes(page).evaluateAll((all) => all.map((_, at) => at === 1 || at === 2)),
  );
  await marked(page).getByRole('link', { name: 'Compare the 2' }).press('Enter');
  await page.waitForURL(new RegExp(`/compare\\?.*search=${search.id}`));
  await eventually(() => page.locator('.compare-alloy').count()).toBe(2);
  // They are the list that the pages of alloys go on from, in place of what was compared before.
  await page.locator('.compare-alloy a').first().click();
  await page.getByRole('button', { name: '✓ In the comparison' }).waitFor();
  await page.getByRole('link', { name: 'See the 2 compared' }).waitFor();
  await page.goBack();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(2);
  await page.goBack();
  await eventually(() => count(page)).toBe('2 marked');
  expect(wrongs).toEqual([]);
});

test('marks survive another order, a filter that leaves nothing, far rows, another view and a reload', async () => {
  const { page } = await site.visit(`/searches/${search.id}`);
  await boxes(page).first().check();
  await page.getByRole('button', { name: /Density/ }).click();
  await page.waitForURL(/order=density/);
  await eventually(() => count(page)).toBe('1 marked');
  await page.locator('.table-scroll').evaluate((element) => element.scrollTo(0, 150 * 38));
  await page.locator('tr[data-index="150"]').getByRole('checkbox').check();
  await page.goto(`${site.url}/searches/${search.id}?max.density=0.1`);
  await page.getByText('None of the kept candidates meets these filters.').waitFor();
  expect(await count(page)).toBe('2 marked');
  await page.getByRole('link', { name: 'Distributions' }).click();
  await page.getByRole('link', { name: 'Table' }).click();
  await page.reload();
  await eventually(() => count(page)).toBe('2 marked');
  // Also one out of sight can be told and taken away.
  await marked(page).getByText('Show what is marked').click();
  await marked(page)
    .getByRole('button', { name: /^Take the mark of / })
    .first()
    .click();
  await eventually(() => count(page)).toBe('1 marked');
  await marked(page).getByRole('button', { name: 'Clear the marks' }).click();
  await eventually(() => count(page)).toBe('None marked');
  await page.getByRole('button', { name: 'Bring the one back' }).click();
  await eventually(() => count(page)).toBe('1 marked');
});

test('more than a comparison takes are told how many to take away, and go on a shortlist in one go', async () => {
  const { id } = await site.api<Shortlist>('/shortlists', { name: 'Cold impeller', by: 'Ana' });
  const { page, wrongs } = await site.visit(`/searches/${search.id}`);
  for (const at of [0, 1, 2, 3, 4, 5, 6, 7]) await boxes(page).nth(at).check();
  await marked(page).getByText('6 are as many as can be compared: take 2 marks away.').waitFor();
  expect(
    await marked(page)
      .getByRole('link', { name: /^Compare/ })
      .count(),
  ).toBe(0);
  await marked(page).getByText('Add to a shortlist').click();
  await page.getByLabel('Your name').fill('Ben');
  await page.getByRole('button', { name: 'Add the 8', exact: true }).click();
  await page.getByText('All on the list').waitFor();
  const entries = async () => (await site.api<Shortlist>(`/shortlists/${id}`)).entries;
  await eventually(async () => (await entries()).map((one) => [one.addedBy, one.search])).toEqual(
    Array.from({ length: 8 }, () => ['Ben', search.id]),
  );
  await boxes(page).nth(8).check();
  await page.getByRole('button', { name: 'Add the one that is not there yet' }).click();
  await eventually(async () => (await entries()).length).toBe(9);
  expect(wrongs).toEqual([]);
});

test('a range of rows is marked at once; more than can be marked are refused with the number', async () => {
  const { page } = await site.visit(`/searches/${search.id}`);
  const row = (index: number) => page.locator(`tr[data-index="${index}"] td`).nth(2);
  await row(0).click();
  await row(3).click({ modifiers: ['Shift'] });
  await page.getByRole('button', { name: 'Mark them' }).click();
  await eventually(() => count(page)).toBe('4 marked');
  await page.getByRole('button', { name: 'Take their marks away' }).click();
  await eventually(() => count(page)).toBe('None marked');
  await page.locator('.table-scroll').evaluate((element) => element.scrollTo(0, 120 * 38));
  await row(120).click({ modifiers: ['Shift'] });
  await page.getByText('121 rows selected.').waitFor();
  await page.getByRole('button', { name: 'Mark them' }).click();
  await marked(page).getByRole('alert').getByText('these would make 121').waitFor();
  expect(await count(page)).toBe('None marked');
});

test('points of the scatter are marked by Space and by the box of a point that a click holds; ticks show them', async () => {
  const { page, wrongs } = await site.visit(
    `/searches/${search.id}?view=scatter&x=density&y=meltingTemperature`,
  );
  const stage = page.locator('.scatter-stage');
  const spoken = () => stage.getAttribute('aria-valuetext');
  const ticks = page.locator('.scatter svg > g:not(.legend) .tick-mark');
  const middle = async (what: Locator) => {
    const { x, y, width, height } = (await what.boundingBox())!;
    return [x + width / 2, y + height / 2] as const;
  };
  const here = page.locator('.plot-here');
  await page.locator('.scatter svg .axis').first().waitFor();
  await stage.focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('Space');
  await eventually(() => count(page)).toBe('1 marked');
  await eventually(spoken).toMatch(/^rank 1: .*; marked$/);
  await eventually(() => ticks.count()).toBe(1);
  const [tickX] = await middle(ticks);
  expect(Math.abs(tickX - (await middle(here))[0])).toBeLessThan(2);
  expect(await textOf(page.locator('.scatter .legend'))).toContain('Marked');

  await page.keyboard.press('PageDown');
  await page.mouse.click(...(await middle(here)));
  const clicked = await spoken();
  expect(clicked).toMatch(/^rank (?!1:)/);
  // Other points on the way to the box are not read.
  await page.mouse.move(...(await middle(ticks.first())));
  expect(await spoken()).toBe(clicked);
  const box = page.locator('.scatter-readout').getByRole('checkbox', { name: /^Mark / });
  await box.check();
  await eventually(() => count(page)).toBe('2 marked');
  await eventually(() => ticks.count()).toBe(2);
  expect(await marked(page).count()).toBe(1);
  // Once it has left, the pointer reads again.
  await page.mouse.move(...(await middle(ticks.first())));
  await eventually(spoken).not.toContain(clicked);

  await page.getByRole('link', { name: 'Table' }).click();
  const [, second] = /^rank (\d+)/.exec(clicked!)!;
  await boxes(page).first().waitFor();
  expect(
    await page
      .locator('.candidates tbody tr', { has: page.locator('.mark-box :checked') })
      .locator('td:first-child')
      .allTextContents(),
  ).toEqual(['1', second]);
  await page.goBack();
  // The rectangle of the scatter lists candidates too: what is marked is told once.
  await page.goto(`${page.url()}&brush=1,99,1,9999`);
  await boxes(page).nth(1).waitFor();
  expect(await marked(page).count()).toBe(1);
  await marked(page).getByRole('link', { name: 'Compare the 2' }).click();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(2);
  expect(wrongs).toEqual([]);
});

test('where a mark cannot be looked up, the scatter is drawn and says what lacks', async () => {
  const { page, wrongs } = await site.visit(`/searches/${search.id}`);
  await boxes(page).first().check();
  await page.route('**/candidates/*', (route) => route.fulfill({ status: 500, body: 'no JSON' }));
  await page.goto(`${site.url}/searches/${search.id}?view=scatter`);
  await page.getByText('The ticks of marked candidates cannot be shown.').waitFor();
  await page.locator('.scatter svg .axis').first().waitFor();
  // Space needs the composition of the point: where that lacks the readout says so.
  await page.route(/candidates\?at=/, (route) => route.fulfill({ status: 500, body: 'no JSON' }));
  await page.locator('.scatter-stage').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('PageDown');
  await page.keyboard.press('Space');
  await page.getByText('Its composition could not be fetched:').waitFor();
  expect(await count(page)).toBe('1 marked');
  expect(wrongs).toEqual([]);
  await page.unroute('**/candidates/*');
  await page.getByRole('button', { name: 'Ask again' }).click();
  await eventually(() => page.locator('.scatter svg > g:not(.legend) .tick-mark').count()).toBe(1);
});

test('no finding of the accessibility checker with marks in light on a wide screen, in dark on a phone', async () => {
  const { page } = await site.visit(`/searches/${search.id}`, wideAndLight);
  await boxes(page).nth(1).check();
  await boxes(page).nth(2).check();
  await marked(page).getByText('Show what is marked').click();
  await marked(page).getByText('Add to a shortlist').click();
  for (const turn of [null, turnNarrowAndDark]) {
    await turn?.(page);
    await eventually(() => boxes(page).count()).toBeGreaterThan(3);
    const { violations } = await axeOf(page);
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth > window.innerWidth')).toBe(false);
  }
  // Far down the cards of a phone the marks are still in sight.
  await page.evaluate('window.scrollTo(0, 4000)');
  await eventually(async () => (await marked(page).boundingBox())?.y).toBe(0);
});

test('a browser that refuses storage marks and compares too, until the page is left', async () => {
  const { page, wrongs } = await site.visit('/searches');
  await page.addInitScript(() => {
    Storage.prototype.getItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    Storage.prototype.setItem = Storage.prototype.getItem;
    Storage.prototype.removeItem = Storage.prototype.getItem;
  });
  await page.goto(`${site.url}/searches/${search.id}`);
  await boxes(page).first().check();
  await boxes(page).nth(1).check();
  await eventually(() => count(page)).toBe('2 marked');
  await marked(page).getByRole('link', { name: 'Compare the 2' }).click();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(2);
  await page.goBack();
  await eventually(() => count(page)).toBe('2 marked');
  expect(wrongs).toEqual([]);
});
