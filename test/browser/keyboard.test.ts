import type { SearchView } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { focusedName, tabTo } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** Whether the focused element draws a ring that can be seen. */
function focusIsVisible(page: Page): Promise<boolean> {
  return page.evaluate<boolean>(`(() => {
    const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  })()`);
}

const focusedId = (page: Page) => page.evaluate<string>('document.activeElement.id');

test('a search is described, started, ordered, walked and read without a mouse', async () => {
  const { page, wrongs } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();

  await tabTo(page, /^Iron/);
  expect(await focusIsVisible(page)).toBe(true);
  await page.keyboard.press('+');
  await page.keyboard.press('ArrowRight');
  expect(await focusedName(page)).toMatch(/^Cobalt/);
  await page.keyboard.press('-');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  for (const symbol of ['Cr', 'Mn', 'Al', 'Ti']) {
    for (const letter of symbol) await page.keyboard.press(letter);
    await page.keyboard.press(' ');
  }
  const marked = page.locator('.card[aria-pressed="true"]');
  expect(await marked.allTextContents()).toEqual([
    'Aluminium, 13 Al, melting temperature 933 K, ✓ in: may be in the alloy',
    'Titanium, 22 Ti, melting temperature 1943 K, ✓ in: may be in the alloy',
    'Chromium, 24 Cr, melting temperature 2180 K, ✓ in: may be in the alloy',
    'Manganese, 25 Mn, melting temperature 1519 K, ✓ in: may be in the alloy',
    'Iron, 26 Fe, melting temperature 1811 K, + must: must be in every alloy',
    'Cobalt, 27 Co, melting temperature 1768 K, − not: must not be in any alloy',
    'Nickel, 28 Ni, melting temperature 1728 K, ✓ in: may be in the alloy',
  ]);

  await tabTo(page, /^Elements in an alloy/);
  await page.keyboard.type('4');
  await tabTo(page, /^Add a limit$/);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.type('16');
  await eventually(() => textOf(page.locator('.size-live'))).toContain(
    'Four or five of Al Cr Fe Mn Ni Ti, with Fe',
  );
  await page.keyboard.press('Control+Enter');

  await page.waitForURL(/\/searches\/[\w-]+$/);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  await tabTo(page, /^DensityρDensity|^ρ?Density/);
  expect(await focusIsVisible(page)).toBe(true);
  await page.keyboard.press('Enter');
  await page.waitForURL(/order=density/);
  await eventually(() => page.locator('th[aria-sort="ascending"]').textContent()).toMatch(/Density/);

  await tabTo(page, /^Al ?\d/);
  expect(await focusIsVisible(page)).toBe(true);
  for (let step = 0; step < 40; step++) await page.keyboard.press('ArrowDown');
  await eventually(() => page.evaluate('document.activeElement.dataset.row')).toBe('40');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Shift+ArrowDown');
  await eventually(() => textOf(page.locator('.look [role="status"]').last())).toContain('3 rows selected');

  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin: site.url });
  await page.keyboard.press('Control+C');
  const copied = await page.evaluate<string>('navigator.clipboard.readText()');
  expect(copied.split('\n').length).toBe(4);
  expect(copied).toMatch(/^rank,composition \(at\.%\),/);

  const composition = copied.trim().split('\n').at(-1)!.split(',')[1]!;
  await page.keyboard.press('Enter');
  await page.waitForURL(new RegExp(`/candidates/${composition}$`));
  await page.locator('.quantity').first().waitFor();
  await tabTo(page, /^δSize mismatch/);
  await page.keyboard.press('Enter');
  expect(await page.locator('details.quantity[open]').count()).toBe(1);
  expect(wrongs).toEqual([]);
});

test('? lists the keys of the page, Escape closes the list, and focus comes back', async () => {
  const { page } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();
  await tabTo(page, /^Iron/);
  await page.keyboard.press('?');
  const keys = page.getByRole('dialog', { name: 'Keys of this page' });
  await keys.waitFor();
  expect(await textOf(keys)).toContain('walk the periodic table');
  await page.keyboard.press('Escape');
  await keys.waitFor({ state: 'hidden' });
  expect(await focusedName(page)).toMatch(/^Iron/);
});

test('a question mark that is typed into a field is only a letter', async () => {
  const { page } = await site.visit('/ask');
  await page.getByLabel('Name of the search').fill('');
  await page.getByLabel('Name of the search').press('?');
  expect(await page.getByLabel('Name of the search').inputValue()).toBe('?');
  expect(await page.getByRole('dialog').count()).toBe(0);
});

test('the first Tab leads to a link past the head, and a new page is read from its beginning', async () => {
  const { page } = await site.visit('/searches');
  // Before the page is there the browser has nothing to go to.
  await page.getByRole('heading', { name: 'Searches' }).waitFor();
  await page.keyboard.press('Tab');
  expect(await focusedName(page)).toBe('Skip to the content');
  await page.keyboard.press('Enter');
  expect(await focusedId(page)).toBe('main');
  await page.getByRole('link', { name: 'Ask', exact: true }).click();
  await eventually(() => focusedId(page)).toBe('main');
  expect(await page.title()).toBe('Describe a search – Tiegel');
});

test('an element without data can be reached, says why, and cannot be picked', async () => {
  const { page } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();
  await tabTo(page, /^Iron/);
  await page.keyboard.press('t');
  await page.keyboard.press('c');
  expect(await focusedName(page)).toBe('Technetium, 43 Tc, cannot be chosen: no data');
  await page.keyboard.press('Enter');
  expect(await page.locator('.card[aria-pressed="true"]').count()).toBe(0);
  expect(await textOf(page.locator('.readout'))).toContain('the project has no data of technetium');
});

test('cancelling asks once, and the harmless answer is the first', async () => {
  const { page } = await site.visit('/searches');
  const { id } = await site.api<{ id: string }>('/searches', {
    name: 'A long one',
    elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Ti', 'V', 'W', 'Zr'] },
    components: { min: 7, max: 8 },
    fractions: { step: 2 },
    rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  });
  await page.goto(`${site.url}/searches/${id}`);
  await tabTo(page, /^Cancel search/);
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Cancel this search?' });
  expect(await textOf(dialog)).toContain('“A long one”');
  expect(await focusedName(page)).toBe('Let it go on');
  await page.keyboard.press('Enter');
  await dialog.waitFor({ state: 'hidden' });
  expect((await site.api<SearchView>(`/searches/${id}`)).state).toBe('running');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  expect(await focusedName(page)).toBe('Cancel the search');
  await page.keyboard.press('Enter');
  await page.getByText('A search that was not finished has no candidates').waitFor();
  expect((await site.api<SearchView>(`/searches/${id}`)).state).toBe('cancelled');
  // The button that asked is gone too: what stands next has the focus.
  expect(await focusedName(page)).not.toMatch(/^Skip to the content/);
  expect(await focusIsVisible(page)).toBe(true);
});

test('a button that rests until its answer comes keeps the focus, and a part that closes hands it to its head', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.api<{ id: string }>('/searches', {
    ...specification,
    fractions: { step: 0.2, min: 2, max: 40 },
  });
  const { page, wrongs } = await site.visit(`/searches/${id}`);
  await tabTo(page, /^Pause$/);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Resume' }).waitFor();
  await eventually(() => focusedName(page)).toBe('Resume');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Pause' }).waitFor();
  await eventually(() => focusedName(page)).toBe('Pause');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Resume' }).waitFor();
  await tabTo(page, /^Worked on/);
  await page.keyboard.press('Enter');
  await tabTo(page, /^Keep these hours/);
  await page.keyboard.press('Enter');
  await eventually(() => focusedName(page)).toMatch(/^Worked on/);
  await site.api(`/searches/${id}/cancel`, {});
  expect(wrongs).toEqual([]);
});

test('a button that takes itself away by a key hands the focus on to its like in the next line, or to what stands next', async () => {
  const { page, wrongs } = await site.visit('/ask');
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.pool tbody tr').nth(8).waitFor();
  const press = async (name: RegExp) => {
    await tabTo(page, name);
    await page.keyboard.press('Enter');
  };
  await press(/^Take out Copper/);
  expect(await focusedName(page)).toBe('Take out Iron');
  expect(await focusIsVisible(page)).toBe(true);
  // From the last line to the one before it.
  await press(/^Take out Vanadium/);
  expect(await focusedName(page)).toBe('Take out Titanium');

  // The same button of a line, not the first one there.
  await page.goto(`${site.url}/alloys/CoCrFeNi`);
  await page.locator('.editor-table').waitFor();
  await press(/^Remove Chromium/);
  expect(await focusedName(page)).toBe('Remove Iron');

  const { id } = await site.api<{ id: string }>('/shortlists', { name: 'By keys', by: 'Ana' });
  await page.goto(`${site.url}/shortlists/${id}`);
  await page.getByLabel('Your name').fill('Ana');
  for (const alloy of ['CoNi', 'CrNi']) {
    await page.getByLabel('An alloy, at.%').fill(alloy);
    await page.getByLabel('An alloy, at.%').press('Enter');
    await page.locator('.short-entry', { hasText: alloy.slice(0, 2) }).waitFor();
  }
  await page.getByRole('button', { name: 'Take off the list' }).first().focus();
  await page.keyboard.press('Enter');
  await eventually(() => page.locator('.short-entry').count()).toBe(1);
  expect(await focusedName(page)).toBe('Take off the list');
  await page.keyboard.press('Enter');
  await eventually(() => page.locator('.short-entry').count()).toBe(0);
  expect(await focusedName(page)).toMatch(/^An alloy/);
  expect(wrongs).toEqual([]);
});
