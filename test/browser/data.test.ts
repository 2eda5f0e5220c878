import type { ElementRecord, PairRecord } from '@tiegel/elements';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { enterOn, tabTo, typeInto } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

test('elements are searched, sorted and opened by keyboard; the address holds what was asked', async () => {
  const elements = await site.api<ElementRecord[]>('/elements');
  const { page, wrongs } = await site.visit('/data');
  await page.locator('.data-overview').waitFor();
  await enterOn(page, /^Elements$/);
  await page.locator('.data-table tbody tr[data-index]').first().waitFor();
  await typeInto(page, /^Search$/, 'transition');
  const meant = elements.filter(({ family }) => family.includes('transition'));
  await page.getByText(`${meant.length} of ${elements.length} elements.`).waitFor();
  await enterOn(page, /^ρDensity/);
  await page.waitForURL(/\/data\/elements\?text=transition&order=density$/);
  const lightest = meant.toSorted((a, b) => Number(a.density) - Number(b.density));
  const rows = page.locator('.data-table tbody tr[data-index]');
  await eventually(() => textOf(rows.first())).toContain(lightest[0]!.name);
  await enterOn(page, /^ρDensity/);
  await eventually(() => textOf(rows.first())).toContain(lightest.at(-1)!.name);
  await tabTo(page, new RegExp(`^${lightest.at(-1)!.symbol} `));
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: lightest.at(-2)!.name }).waitFor();
  await page.goBack();
  await eventually(() => textOf(rows.first())).toContain(lightest.at(-1)!.name);
  expect(await page.getByLabel('Search').inputValue()).toBe('transition');
  expect(wrongs).toEqual([]);
});

test('one element tells each value with unit and source, its hazards and its pairs', async () => {
  const [elements, pairs] = await Promise.all([
    site.api<ElementRecord[]>('/elements'),
    site.api<PairRecord[]>('/pairs'),
  ]);
  const beryllium = elements.find(({ symbol }) => symbol === 'Be')!;
  const { page, wrongs } = await site.visit('/data/elements/Be');
  const article = page.locator('.one-element');
  // Standard atomic weight of beryllium, IUPAC: 9.0121831(5); number typed from memory.
  await eventually(() => textOf(article.locator('tr', { hasText: 'Atomic mass' }))).toMatch(/9\.0122u/);
  await eventually(() => textOf(article)).toContain('carcinogenic dust or fume');
  for (const { text } of beryllium.hazards) expect(await textOf(article)).toContain(text);
  const most = pairs
    .filter(({ a, b }) => a === 'Be' || b === 'Be')
    .sort((one, other) => one.mixingEnthalpy - other.mixingEnthalpy)[0]!;
  const partner = most.a === 'Be' ? most.b : most.a;
  expect(await textOf(article.locator('.data-partners').first())).toMatch(new RegExp(`^${partner} −`));
  await page.getByRole('link', { name: 'All 55 pairs of Be' }).click();
  await page.getByRole('table', { name: 'Pairs' }).waitFor();
  expect(wrongs).toEqual([]);
});

test('an element that is not there is told apart from a word that is none', async () => {
  const { page } = await site.visit('/data/elements/Og');
  await page.getByText('There are no data of oganesson (Og) here.').waitFor();
  await page.goto(`${site.url}/data/elements/Xq`);
  await page.getByText('No element has the symbol “Xq”.').waitFor();
  await page.goto(`${site.url}/data/nothing`);
  await page.getByText('The data have no part “nothing”.').waitFor();
});

test('the matrix of pairs is walked by arrows, holds the data, and leads to the alloy', async () => {
  const pairs = await site.api<PairRecord[]>('/pairs');
  const enthalpyOf = (one: string, other: string) =>
    pairs.find(({ a, b }) => (a === one && b === other) || (a === other && b === one))!.mixingEnthalpy;
  const { page, wrongs } = await site.visit('/data/pairs');
  await page.locator('.pair-matrix tbody tr').first().waitFor();
  await typeInto(page, /^Of the elements$/, 'al co ni qq');
  await page.getByText('“qq” is no symbol of an element with pairs here.').waitFor();
  await eventually(() => page.locator('.pair-matrix tbody tr').count()).toBe(3);
  await tabTo(page, /^−\d+$/);
  await page.keyboard.press('ArrowRight');
  await page.waitForURL(/at=Al-Ni/);
  const minus = (value: number) => String(value).replace('-', '−');
  await eventually(() => textOf(page.locator('.matrix-readout'))).toContain(
    `${minus(enthalpyOf('Al', 'Ni'))} kJ/mol`,
  );
  await page.keyboard.press('ArrowDown');
  await eventually(() => textOf(page.locator('.matrix-readout'))).toContain(
    `${minus(enthalpyOf('Co', 'Ni'))} kJ/mol`,
  );
  await page.reload();
  await eventually(() => textOf(page.locator('.matrix-readout'))).toContain('Co–Ni');
  await page.locator('.pair-matrix td[tabindex="0"]').focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/alloys\/Co50Ni50$/);
  expect(wrongs).toEqual([]);
});

test('of very many pairs only those in sight are drawn, and the list sorts by value', async () => {
  const pairs = await site.api<PairRecord[]>('/pairs');
  const { page, wrongs } = await site.visit('/data/pairs?show=list');
  const rows = page.locator('.data-table tbody tr[data-index]');
  await rows.first().waitFor();
  expect(await page.locator('.data-table').getAttribute('aria-rowcount')).toBe(String(pairs.length + 1));
  expect(await rows.count()).toBeLessThan(80);
  const [least] = pairs.toSorted((a, b) => a.mixingEnthalpy - b.mixingEnthalpy);
  expect(await textOf(rows.first())).toContain(`${least!.a}–${least!.b}`);
  await rows.first().locator('a').focus();
  await page.keyboard.press('End');
  await page.locator(`tr[aria-rowindex="${pairs.length + 1}"]`).waitFor();
  expect(wrongs).toEqual([]);
});

test('invented prices say so', async () => {
  const { page, wrongs } = await site.visit('/data/prices');
  await page.getByText('These prices are invented for the demonstration').waitFor();
  await page.getByLabel('Search').fill('nickel');
  await eventually(() => page.locator('.data-table tbody tr[data-index]').count()).toBe(1);
  await page.getByLabel('Search').fill('nothing like it');
  await page.getByText('No price fits “nothing like it”.').waitFor();
  await page.getByRole('button', { name: 'Show all prices' }).click();
  await page.locator('.data-table tbody tr[data-index]').nth(5).waitFor();
  expect(wrongs).toEqual([]);
});

test('numbers stand in the way of the reader’s locale', async () => {
  const { page } = await site.visit('/data/elements?text=Fe', { locale: 'de-DE' });
  await eventually(() => textOf(page.locator('.data-table tbody tr[data-index]').first())).toMatch(
    /7,87.*1811/,
  );
});

test.each([
  ['/data/elements', '/elements', 'The elements cannot be shown.', '.data-table'],
  ['/data/pairs', '/pairs', 'The pair enthalpies cannot be shown.', '.pair-matrix'],
  ['/data/prices', '/prices', 'The price list cannot be shown.', '.data-table'],
])('%s says when nothing answers, and asks again', async (path, route, words, whole) => {
  const { page } = await site.visit('/nowhere');
  await page.route(`**/api/v1${route}`, (one) => one.abort());
  await page.goto(site.url + path);
  await page.getByText(words).waitFor();
  await page.unroute(`**/api/v1${route}`);
  await page.getByRole('button', { name: 'Ask again' }).click();
  await page.locator(whole).waitFor();
});

test.each([
  '/data',
  '/data/elements',
  '/data/elements/Mn',
  '/data/pairs',
  '/data/pairs?show=matrix',
  '/data/prices',
])('%s is not wider than a phone', async (path) => {
  const { page, wrongs } = await site.visit(path, phone);
  await page
    .locator('.data-page .candidate-card, .data-page .data-overview, .one-element-values, .pair-matrix')
    .first()
    .waitFor();
  expect(await page.evaluate('document.documentElement.scrollWidth <= 390')).toBe(true);
  expect(wrongs).toEqual([]);
});
