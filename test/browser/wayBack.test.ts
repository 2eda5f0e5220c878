import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site } from './site.ts';

let site: Site;
let search: string;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = (await site.finish(specification)).id;
});
afterAll(() => site?.close());

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** Where the link in focus leads, if it lies within the screen and, in a table, below its head. */
const linkInSight = (page: Page) =>
  page.evaluate(`(() => {
    const { activeElement: link } = document;
    const box = link.getBoundingClientRect();
    const top = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    return link.contains(top) ? link.getAttribute('href') : null;
  })()`);

/** Opens what is in focus by Enter, does something there, goes back, and expects to stand where it was. */
async function thereAndBack(page: Page, meanwhile: () => Promise<unknown> = async () => {}) {
  const from = page.url();
  const link = await page.evaluate('document.activeElement.getAttribute("href")');
  await page.keyboard.press('Enter');
  await page.waitForURL((url) => url.href !== from);
  await page.locator('h1').first().waitFor();
  await meanwhile();
  await page.goBack();
  await eventually(() => page.evaluate('location.href')).toBe(from);
  await eventually(() => linkInSight(page)).toBe(link);
}

test('from a candidate Back leads to its row, in sight and in focus, also after a reload', async () => {
  const { page, wrongs } = await site.visit(`/searches/${search}?order=density`);
  const reached = (row: number) =>
    eventually(() => page.evaluate('document.activeElement.dataset.row')).toBe(String(row));
  await page.locator('.candidate a').first().focus();
  await page.keyboard.press('End');
  await reached(199);
  // The rows of the next page are there once these are walked.
  await eventually(async () => {
    await page.keyboard.press('PageDown');
    return Number(await page.evaluate('document.activeElement.dataset.row'));
  }).toBeGreaterThan(200);
  const row = await page.evaluate('document.activeElement.dataset.row');
  await thereAndBack(page);
  // The walk goes on from there.
  await page.keyboard.press('ArrowUp');
  await reached(Number(row) - 1);
  await thereAndBack(page, async () => {
    await page.reload();
    await page.locator('.quantity').first().waitFor();
  });
  // What is opened anew begins at its top.
  await page.getByRole('link', { name: 'Searches', exact: true }).click();
  await page.locator('.search-line a').first().click();
  await page.locator('.candidate a').first().waitFor();
  expect(await page.evaluate('document.activeElement.id')).toBe('main');
  expect(await page.evaluate('scrollY')).toBe(0);
  expect(wrongs).toEqual([]);
});

test('on a phone Back leads to the card, and in the lists of data to the line', async () => {
  const { page } = await site.visit(`/searches/${search}`, phone);
  const card = page.locator('.candidate-card[data-index="24"] a');
  await eventually(async () => {
    await page.mouse.wheel(0, 600);
    return card.count();
  }).toBe(1);
  await card.focus();
  await thereAndBack(page);

  const { page: wide } = await site.visit('/data/alloys');
  await wide.locator('.data-table tbody a').first().focus();
  await wide.keyboard.press('End');
  await eventually(() => wide.evaluate('Number(document.activeElement.dataset.row)')).toBeGreaterThan(50);
  await thereAndBack(wide);
});

test('whoever goes on before the page is there again is not called back', async () => {
  const { page } = await site.visit(`/searches/${search}`);
  await page.locator('.candidate a').nth(5).click();
  await page.locator('.quantity').first().waitFor();
  await page.reload();
  await page.locator('.quantity').first().waitFor();
  let answer = () => {};
  const held = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route('**/candidates?*', async (route) => {
    await held;
    await route.continue();
  });
  await page.goBack();
  await page.locator('.look-tools').waitFor();
  await page.keyboard.press('Tab');
  answer();
  await page.locator('.candidate a').nth(5).waitFor();
  expect(await page.evaluate('document.activeElement.closest(".candidate")')).toBeNull();
});
