import { readFileSync } from 'node:fs';
import type { CandidatePage } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
/** a finished search, and the address of its best candidate */
let search: string;
let best: { composition: Record<string, number>; path: string };
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = (await site.finish(specification)).id;
  const { items } = await site.api<CandidatePage>(`/searches/${search}/candidates?limit=1`);
  const { composition } = items[0]!;
  best = {
    composition,
    path: `/searches/${search}/candidates/${Object.entries(composition).flat().join('')}`,
  };
});
afterAll(() => site?.close());

const share = (page: Page, name: string) => page.getByRole('spinbutton', { name: `${name}, at.%` });
const quantity = (page: Page, name: string) =>
  page.locator('.quantity').filter({ has: page.getByText(name, { exact: true }) });
const shownOf = (page: Page, name: string) => textOf(quantity(page, name).locator('.quantity-value'));
const answered = (page: Page) => page.locator('.verdict-line').waitFor();
const fresh = (page: Page) => eventually(() => page.locator('.dimmed').count()).toBe(0);
const notKept = (page: Page) =>
  page.getByRole('status').filter({ hasText: 'Not among the kept candidates of the search' });
const pathOf = (page: Page) => new URL(page.url()).pathname;

// wt.% of cobalt by hand, with the standard atomic weights of IUPAC 2021: 58.933 / (58.933 + 51.996 + 55.845 + 54.938 + 58.693) = 21.02 %.
test('the first screen says what is known of a published alloy, how sure the estimate is, and what decides nothing', async () => {
  const { page, wrongs } = await site.visit('/alloys/CoCrFeMnNi');
  await answered(page);
  expect(await textOf(page.locator('.verdict-line'))).toBe(
    'Known: one uniform metal phase (fcc), in 17 of 20 publications.',
  );
  expect(await textOf(page.locator('.verdict'))).toMatch(
    /The estimate of one solid solution is 0\.\d\d\. Of the published alloys that it rated .* % were \(about \d+ alloys\)/,
  );
  expect(await textOf(page.locator('.arguments-open'))).toMatch(
    /published rules for one phase\. That says little/,
  );
  expect(await textOf(page.locator('.editor-table tr', { hasText: 'cobalt' }))).toContain('21.02');
  expect(await textOf(page.locator('#phases').locator('..'))).toMatch(/10\.1016\//);
  expect(wrongs).toEqual([]);
});

// Valence electrons 7.80 with chromium and vanadium: within the range of Tsai et al. 2013 (6.88 to 7.84).
test('a rule that expects a second phase speaks against one phase, and its sign goes by what follows', async () => {
  const { page } = await site.visit('/alloys/Cr35Cu5Fe30Ni25V5');
  await answered(page);
  await eventually(() => textOf(page.locator('.arguments-against'))).toContain(
    'Tsai et al. 2013 expects a σ phase after annealing: not tested on published alloys.',
  );
  const rule = (name: string) => page.locator('.criteria-table tr', { hasText: name });
  expect(await textOf(rule('Tsai et al. 2013').locator('.unmet'))).toBe(
    '× expects a σ phase after annealing',
  );
  expect(await textOf(rule('Yurchenko et al. 2017').locator('.met'))).toBe('✓ does not expect a Laves phase');
});

test('an alloy far from all that is known has no basis, and says so instead of a number', async () => {
  const { page } = await site.visit('/alloys/Li50Sc50');
  await answered(page);
  expect(await textOf(page.locator('.verdict-line'))).toBe('Nothing can be said of its phases.');
  expect(await textOf(page.locator('.phases'))).toContain('No basis for an estimate');
  expect(await page.locator('.class-bars').count()).toBe(0);
  expect(await shownOf(page, 'Shear modulus')).toContain('–');
  expect(await textOf(quantity(page, 'Shear modulus').locator('.quantity-meaning'))).toBe(
    'No value: shear modulus of Li is not known.',
  );
});

test('a forgotten amount is asked for before the alloy is taken', async () => {
  const { page } = await site.visit('/alloys');
  const field = page.getByRole('textbox', { name: 'Alloy, at.%' });
  await field.fill('Fe70Mn');
  await field.press('Enter');
  await page
    .getByText(
      'Mn has no amount: counted as 1 beside 70; Fe98.59 Mn1.41. Press ‘Look at it’ again to take it so.',
    )
    .waitFor();
  expect(pathOf(page)).toBe('/alloys');
  await field.press('Enter');
  await answered(page);
  expect(pathOf(page)).toMatch(/^\/alloys\/Fe98\.59\d*Mn1\.40/);
});

test('an alloy as papers print it, with a bracket and digits below the line, is taken at once', async () => {
  const { page } = await site.visit('/alloys');
  const field = page.getByRole('textbox', { name: 'Alloy, at.%' });
  await field.fill('(CoCrFeNi)₉₄Al₆');
  await field.press('Enter');
  await answered(page);
  expect(pathOf(page)).toBe('/alloys/Al6Co23.5Cr23.5Fe23.5Ni23.5');
});

test('arrow keys step a share; everything follows, the address too, and focus stays', async () => {
  const { page, wrongs } = await site.visit('/alloys/Fe50Ni50');
  await answered(page);
  expect(await shownOf(page, 'Valence electron concentration')).toContain('9.00');
  await share(page, 'Iron').focus();
  await page.keyboard.press('PageUp');
  await page.keyboard.press('PageUp');
  await page.keyboard.press('ArrowDown');
  expect(await share(page, 'Iron').inputValue()).toBe('69');
  // 69 iron (8) and 50 nickel (10) of 119: (552 + 500) / 119.
  await eventually(() => shownOf(page, 'Valence electron concentration')).toContain('8.84');
  expect(await textOf(page.locator('.editor-table tfoot'))).toContain('119');
  await page.getByRole('button', { name: 'Make it 100' }).click();
  await eventually(async () => pathOf(page)).toMatch(/^\/alloys\/Fe57\.98\d*Ni42\.0\d*$/);
  await share(page, 'Iron').fill('60');
  await share(page, 'Iron').press('Tab');
  await share(page, 'Nickel').fill('40');
  await eventually(async () => pathOf(page)).toBe('/alloys/Fe60Ni40');
  expect(await share(page, 'Nickel').evaluate((field) => field === field.ownerDocument.activeElement)).toBe(
    true,
  );
  expect(await page.title()).toBe('Fe60Ni40 – Tiegel');
  await page.reload();
  expect(await share(page, 'Iron').inputValue()).toBe('60');
  expect(wrongs).toEqual([]);
});

test('elements come and go, one may take what the others leave, and all can be undone', async () => {
  const { page } = await site.visit('/alloys/Fe50Ni50');
  await page.getByLabel('What the others leave of 100 goes to').selectOption('Fe');
  await page.getByLabel('Add an element').fill('chromium');
  await page.getByLabel('Add an element').press('Enter');
  await share(page, 'Chromium').fill('20');
  await eventually(async () => pathOf(page)).toBe('/alloys/Cr20Fe30Ni50');
  await page.getByLabel('Add an element').fill('Xx');
  await page.getByLabel('Add an element').press('Enter');
  await page.getByText('There are no data of “Xx”.').waitFor();
  await share(page, 'Chromium').fill('60');
  await page.getByText('The others make up more than 100 at.% already.').waitFor();
  expect(pathOf(page)).toBe('/alloys/Cr20Fe30Ni50');
  await share(page, 'Chromium').fill('2O');
  await page.getByText('“2O” is not a number. Write digits alone, as in 12.5.').waitFor();
  await page.getByRole('button', { name: 'Remove Chromium' }).click();
  await eventually(async () => pathOf(page)).toBe('/alloys/Fe50Ni50');
  await page.getByRole('button', { name: 'Remove Nickel' }).click();
  await eventually(async () => pathOf(page)).toBe('/alloys/Fe100');
  await page.getByText('A pure element: one phase, and no alloy.').waitFor();
  await page.getByRole('button', { name: 'Undo all changes' }).click();
  await eventually(async () => pathOf(page)).toBe('/alloys/Fe50Ni50');
});

test('what the server says of another composition is dimmed until its answer comes', async () => {
  const { page } = await site.visit('/alloys/CoCrFeMnNi');
  await answered(page);
  let answer = () => {};
  const late = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route('**/api/v1/explain', async (route) => {
    await late;
    await route.continue();
  });
  await share(page, 'Manganese').fill('0');
  // Closed quantities do not wait: without manganese VEC is (9 + 6 + 8 + 10) / 4.
  await eventually(() => shownOf(page, 'Valence electron concentration')).toContain('8.25');
  await page.locator('.verdict .dimmed').waitFor();
  expect(await textOf(page.locator('.verdict .dimmed-note'))).toContain('Of the composition before');
  answer();
  await fresh(page);
  expect(await textOf(page.locator('#words').locator('..'))).toContain('Co25Cr25Fe25Ni25');
});

test('without an answer the page goes on with what it can compute, and asks again on demand', async () => {
  const { page } = await site.visit('/alloys/CoCrFeMnNi');
  await answered(page);
  await fresh(page);
  await page.route('**/api/v1/explain', (route) => route.abort());
  await share(page, 'Manganese').fill('0');
  await page.getByText('This is of the composition before: The server does not answer.').first().waitFor();
  expect(await shownOf(page, 'Valence electron concentration')).toContain('8.25');
  await page.unroute('**/api/v1/explain');
  await page.getByRole('button', { name: 'Ask again' }).first().click();
  await fresh(page);
});

test('an answer that never came is named, with what to do', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/api/v1/explain', (route) => route.abort());
  await page.goto(`${site.url}/alloys/CoCrFeMnNi`);
  await page.getByText('What is likely of the alloy cannot be shown.').waitFor();
  expect(await shownOf(page, 'Valence electron concentration')).toContain('8.00');
});

test('conditions stand in the address, change what depends on them, and are printed', async () => {
  const { page } = await site.visit('/alloys/CoCrFeNi?serviceTemperature=77');
  await answered(page);
  const cold = await shownOf(page, 'Yield strength, if fcc');
  expect(await page.getByLabel('Service temperature').inputValue()).toBe('77');
  await page.getByLabel('Service temperature').fill('293.15');
  await page.getByLabel('Grain size').fill('4');
  await eventually(() => shownOf(page, 'Yield strength, if fcc')).not.toBe(cold);
  expect(new URL(page.url()).search).toBe('?serviceTemperature=293.15&grainSize=4');
  expect(await textOf(page.locator('.provenance'))).toContain(
    'anneal temperature 1273.15 K, service temperature 293.15 K, strain rate 0.001 1/s, grain size 4 µm',
  );
  await page.getByLabel('Grain size').fill('0');
  await page.getByText('Write a number from 0.1 to 10000 µm.').waitFor();
  expect(new URL(page.url()).search).toContain('grainSize=4');
});

test('a quantity opens to its formula, inputs with sources, and what one at.% more does', async () => {
  const { page } = await site.visit('/alloys/Fe50Ni50');
  const line = quantity(page, 'Valence electron concentration');
  await line.locator('summary').first().click();
  const origin = line.locator('.origin');
  await origin.waitFor();
  // VEC of iron is 8, of nickel 10; one at.% more nickel at the expense of iron adds 0.02.
  const rows = await origin.locator('tbody tr').allInnerTexts();
  expect(rows[0]).toMatch(/^Fe\s+50\s+8\b.*−0\.020$/s);
  expect(rows[1]).toMatch(/^Ni\s+50\s+10\b.*\+0\.020$/s);
  expect(await textOf(line)).toContain('Guo et al.');
  await eventually(() => textOf(line)).toMatch(/Weighing makes of it 8\.99\d+ to 9\.00\d+/);
});

test('weighing on a coarse balance turns a rule, and a fine one settles it', async () => {
  // CoCrFeMnNi lies on VEC 8, where Guo's rule for fcc begins.
  const { page } = await site.visit('/alloys/CoCrFeMnNi?mass=10&resolution=0.1');
  const section = page.locator('section', { has: page.locator('#weighing') });
  await eventually(() => textOf(section)).toContain('Weighing alone can turn: Guo et al. 2011, fcc');
  await page.locator('.criteria-table tr', { hasText: 'weighing can turn it' }).first().waitFor();
  await page.getByLabel('Mass of the batch').fill('0');
  await page.getByText('Write a mass above 0 g.').waitFor();
  await page.getByLabel('Mass of the batch').fill('0,05');
  await page.getByText('A balance that shows 0.1 g cannot weigh a batch of 0.05 g.').waitFor();
  await page.goto(`${site.url}/alloys/Co30Cr10Fe30Ni30`);
  await eventually(() => textOf(section)).toContain('Weighing alone can turn no rule.');
});

test('a candidate shows rank and margins; changed, it says that the search did not keep it', async () => {
  const { page, wrongs } = await site.visit(best.path);
  await page.getByText(/Rank 1 of/).waitFor();
  const limits = page.locator('section', { has: page.locator('#margins-head') });
  expect(await limits.locator('.met').count()).toBe(5);
  const [element] = Object.keys(best.composition);
  const field = page.locator(`#share-${element}`);
  await field.focus();
  await field.press('ArrowUp');
  expect(Number(await field.inputValue())).toBe(best.composition[element!]! + 5);
  await field.fill('97');
  const undo = page.getByRole('button', { name: 'Undo all changes' });
  const place = await undo.boundingBox();
  await notKept(page).waitFor();
  await eventually(() => limits.locator('.unmet').count()).toBeGreaterThan(0);
  expect(pathOf(page)).toMatch(new RegExp(`^/searches/${search}/candidates/`));
  // Answers that come in must not move it away under the hand.
  await fresh(page);
  expect(await undo.boundingBox()).toEqual(place);
  await undo.click();
  await page.getByText(/Rank 1 of/).waitFor();
  expect(wrongs).toEqual([]);
});

test('an element is replaced by every other, or by those that are named, and one click opens the result', async () => {
  const { page, wrongs } = await site.visit('/alloys/CoCrFeMnNi');
  await page.getByRole('button', { name: 'Replace Cobalt' }).click();
  const lines = page.locator('.substitutes tbody tr');
  await lines.first().waitFor();
  expect(await page.locator('#replace').evaluate((head) => head === head.ownerDocument.activeElement)).toBe(
    true,
  );
  await page.getByRole('button', { name: /^Show all \d+$/ }).click();
  expect(await lines.count()).toBeGreaterThan(50);
  await page.getByRole('button', { name: 'VEC' }).click();
  const changes = async () =>
    (await lines.locator('[data-label^="Valence"]').allInnerTexts()).map(parseFloat);
  const rising = await changes();
  expect(rising).toEqual(rising.toSorted((a, b) => a - b));

  await page.getByLabel('By', { exact: true }).fill('ni, co');
  await page.getByLabel('By', { exact: true }).press('Enter');
  await page.getByText('Co cannot replace itself.').waitFor();
  await page.getByLabel('By', { exact: true }).fill('ni mn');
  await page.getByLabel('By', { exact: true }).press('Enter');
  await eventually(() => lines.count()).toBe(6);
  expect(new URL(page.url()).search).toBe('?replace=Co&with=Ni,Mn');
  await page.getByRole('link', { name: '20 Co → 10 Ni + 10 Mn' }).click();
  await page.waitForURL(/\/alloys\/Cr20Fe20Mn30Ni30$/);
  expect(await share(page, 'Manganese').inputValue()).toBe('30');
  expect(wrongs).toEqual([]);
});

test('in the light of a search, replacements tell which limits they break', async () => {
  const { page } = await site.visit(`${best.path}?replace=Fe&with=Al,W`);
  const line = page
    .locator('.substitutes tbody tr', { hasText: '→ 20 W' })
    .or(page.locator('.substitutes tbody tr', { hasText: /→ \d+ W$/m }));
  await line.first().waitFor();
  expect(await textOf(line.first().locator('[data-label="Limits"]'))).toMatch(/× density ≤ 8 g\/cm³/);
  await line.first().getByRole('link').click();
  await page.waitForURL(new RegExp(`/searches/${search}/candidates/.*W`));
});

// The demonstration forbids cobalt, and asks for Cr, Fe and Ni with at least 15 at.% Cr.
test('in the light of a search, its space is kept too: what it does not allow is named in the table and on the page of the result', async () => {
  const { page, wrongs } = await site.visit(`${best.path}?replace=Ni&with=Co`);
  const space = page.locator('section', { has: page.locator('#space-head') });
  await space.waitFor();
  expect(await textOf(space)).toMatch(/✓ Elements, their number and their shares are as asked/);
  const line = page.locator('.substitutes tbody tr').first();
  await line.waitFor();
  expect(await page.locator('.substitutes .met').count()).toBe(0);
  const whole = page.locator('.substitutes tbody tr', { hasText: 'Ni is required' });
  expect(await textOf(whole.locator('[data-label="Limits"]'))).toMatch(/×.*Co is forbidden; Ni is required/);
  await whole.getByRole('link').click();
  await page.waitForURL(new RegExp(`/searches/${search}/candidates/.*Co`));
  const reasons = space.getByRole('list', { name: 'What the search does not allow' }).getByRole('listitem');
  await eventually(() => reasons.count()).toBeGreaterThan(1);
  expect((await reasons.allInnerTexts()).join(' ')).toMatch(/Co is forbidden.*Ni is required/s);
  expect(wrongs).toEqual([]);
});

test('the entropy scale is saved as SVG and PNG, with the conventional alloys on it', async () => {
  const { page } = await site.visit('/alloys/CoCrFeMnNi');
  const figure = page.getByRole('figure', { name: /^Configurational entropy of/ });
  const saved = async (format: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      figure.getByRole('button', { name: new RegExp(`as ${format}$`) }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(`entropy-Co20Cr20Fe20Mn20Ni20.${format.toLowerCase()}`);
    return readFileSync(await download.path());
  };
  const svg = (await saved('SVG')).toString('utf8');
  expect(svg).toContain('Stainless steel 304');
  expect(svg).toContain('13.4 (5.0)');
  expect(svg).not.toMatch(/var\(|oklch/);
  expect([...(await saved('PNG')).subarray(1, 4)].map((byte) => String.fromCharCode(byte)).join('')).toBe(
    'PNG',
  );
});

test('strengths are read out along the curve by keys', async () => {
  const { page } = await site.visit('/alloys/CoCrFeMnNi');
  const curve = page.getByRole('slider', { name: 'Strength at a temperature' });
  await curve.focus();
  await page.keyboard.press('End');
  expect(await curve.getAttribute('aria-valuetext')).toMatch(
    /^1600 K: fcc \d+ MPa \(inside\), bcc \d+ MPa \(outside\)$/,
  );
  await page.keyboard.press('Home');
  expect(await curve.getAttribute('aria-valuetext')).toMatch(/^77 K/);
});

test.each([
  ['/alloys/CoXx20', '"Xx" (character 3) is not the symbol of an element.'],
  ['/alloys/20Co', '"2" is an amount without a symbol before it'],
  ['/alloys/Co%20%25', 'is neither a symbol nor an amount'],
])('%s says what is wrong with it, and lets it be mended', async (path, words) => {
  const { page, wrongs } = await site.visit(path);
  await eventually(() => textOf(page.getByRole('alert').first())).toContain(words);
  await page.getByLabel('Alloy, at.%').fill('CoNi');
  await page.getByLabel('Alloy, at.%').press('Enter');
  await page.waitForURL(/\/alloys\/Co50Ni50$/);
  expect(wrongs).toEqual([]);
});

test.each([964, 1024])('at %i px the composition that is edited stays within its column', async (width) => {
  const { page } = await site.visit('/alloys/MoNbTaVW', { viewport: { width, height: 800 } });
  const right = async (place: string) => {
    const { x, width: wide } = (await page.locator(place).boundingBox())!;
    return x + wide;
  };
  await page.locator('.editor-table').waitFor();
  expect(await right('.editor-table')).toBeLessThanOrEqual((await right('.alloy-sides')) + 0.5);
});
