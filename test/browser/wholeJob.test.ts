import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { enterOn, tabTo, typeInto } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** How a row or a link of an alloy is called. */
const composition = /^(?:[A-Z][a-z]? ?\d+(?:\.\d+)? ?){4,}/;

/**
 * The whole job on the invented demonstration: ask, watch, look, understand, substitute, shortlist,
 * charge sheet, melt, evidence. Nothing but keys is used; selects and checkboxes are set by them too.
 */
async function wholeJob(page: Page, narrow: boolean): Promise<void> {
  await page.locator('.card').first().waitFor();
  await enterOn(page, /^As the demonstration/);
  await page.locator('.size-numbers').waitFor();
  await enterOn(page, /^Start search/);
  await page.waitForURL(/\/searches\/[\w-]+$/);

  await page
    .locator(narrow ? '.candidate-card' : '.candidates tbody tr[data-index]')
    .first()
    .waitFor();
  await enterOn(page, composition);
  await page.waitForURL(/\/candidates\//);
  await page.locator('.quantity').first().waitFor();

  await enterOn(page, /^Replace an element/);
  await page.locator('#replace').waitFor();
  await page.locator('.replace tbody tr').first().waitFor();
  const before = page.url();
  await enterOn(page, /→/);
  await page.waitForURL(({ href }) => href !== before);
  await page.locator('.quantity').first().waitFor();
  const alloy = decodeURIComponent(new URL(page.url()).pathname.split('/').at(-1)!);

  await enterOn(page, /^Shortlists$/);
  await typeInto(page, /^Your name/, 'Ana');
  await typeInto(page, /^What for/, narrow ? 'On the phone' : 'At the desk');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/shortlists\/\w+$/);
  await typeInto(page, /^An alloy, at\.%/, alloy);
  await page.keyboard.press('Enter');
  await page.locator('.short-entry').waitFor();
  await typeInto(page, /^Note/, 'Worth a melt.');
  await page.keyboard.press('Enter');
  await page.getByText('Worth a melt.').waitFor();

  await enterOn(page, /^Weigh it out/);
  await page.waitForURL(/\/charge\?/);
  await page.locator('.sheet-lines tbody tr').first().waitFor();
  const toWeigh = await massesOn(page);
  await enterOn(page, /^(?:Save(?!d)|Keep)/);
  await page.waitForURL(/\/charge-sheets\/[\w-]+$/);

  await enterOn(page, /^Record its melt/);
  await page.waitForURL(/\/melts\/new/);
  for (const [material, mass] of Object.entries(toWeigh)) {
    await typeInto(page, new RegExp(`^${material}: weighed`), mass);
  }
  await tabTo(page, /^BCC/);
  await page.keyboard.press('Space');
  await tabTo(page, /^X-ray diffraction/);
  await page.keyboard.press('Space');
  await enterOn(page, /^Record the melt/);
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);

  await enterOn(page, /^Evidence$/);
  await page.locator('#own-estimate').waitFor();
}

/** By material, as the sheet says. */
async function massesOn(page: Page): Promise<Record<string, string>> {
  const rows = await page.locator('.sheet-lines tbody tr').all();
  const read = await Promise.all(
    rows.map(async (row) => {
      const name = (await textOf(row.locator('th'))).trim().replace(/^\d+\s*/, '');
      return [name, await textOf(row.locator('td').first())] as const;
    }),
  );
  return Object.fromEntries(read);
}

test('the whole job, from the question to the evidence, without a mouse', { timeout: 300_000 }, async () => {
  const { page, wrongs } = await site.visit('/');
  await wholeJob(page, false);
  expect(wrongs).toEqual([]);
});

test('the whole job on a screen of 390 pixels', { timeout: 300_000 }, async () => {
  const { page, wrongs } = await site.visit('/', { viewport: { width: 390, height: 844 } });
  await wholeJob(page, true);
  await eventually(() => page.evaluate('document.documentElement.scrollWidth <= 390')).toBe(true);
  expect(wrongs).toEqual([]);
});
