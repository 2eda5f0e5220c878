import type { Candidate, Shortlist } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

test('alloys are put side by side from their pages; the address holds them', async () => {
  const { page, wrongs } = await site.visit('/alloys/CoCrFeMnNi');
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.getByRole('button', { name: '✓ In the comparison' }).waitFor();
  await page.getByRole('link', { name: 'See the one compared' }).click();
  await page.getByLabel('One more alloy, at.%').fill('CoCrFeNi');
  await page.getByLabel('One more alloy, at.%').press('Enter');
  await page.waitForURL(/alloy=Co20Cr20Fe20Mn20Ni20&alloy=Co25Cr25Fe25Ni25$/);
  const heads = page.locator('.compare-alloy');
  await eventually(() => heads.count()).toBe(2);
  await page.reload();
  await eventually(() => heads.count()).toBe(2);
  await page.getByRole('button', { name: 'Take A out' }).click();
  await eventually(() => heads.count()).toBe(1);
  expect(await textOf(heads)).toContain('Co25');
  expect(wrongs).toEqual([]);
});

test('what differs is told by words and signs, judged by how much published alloys differ', async () => {
  const { page } = await site.visit('/compare?alloy=CoCrFeMnNi&alloy=CoCrFeNi&alloy=NbMoTaW');
  const line = (name: string) => page.locator('.compare-table tr', { hasText: name }).first();
  await eventually(() => textOf(line('Likely'))).toMatch(/phase.*phase.*phase/);
  // VEC by hand: 40/5, 33/4, and 22/4 with Nb 5, Mo 6, Ta 5, W 6.
  await eventually(() => textOf(line('Valence electron concentration'))).toMatch(
    /8\.00.*highest\s+8\.25.*lowest\s+5\.50.*≠≠ much/,
  );
  expect(await textOf(line('Basis of the estimate'))).toContain('= alike');
  expect(await textOf(line('As published'))).toContain('FCC in 17 of 20 publications');
  // One number, one name, one form.
  expect(await textOf(line('Estimate of one solid solution'))).toMatch(/0\.\d\d.*0\.\d\d/);
  expect(await line('uniform phase').count()).toBe(0);
  const rows = page.locator('.compare-table tbody tr');
  const all = await rows.count();
  await page.getByLabel('Only what differs').check();
  await eventually(() => rows.count()).toBeLessThan(all);
  expect(await textOf(page.locator('.compare-table'))).not.toContain('alike');
  expect(new URL(page.url()).search).toContain('only=different');
});

test('every published rule of the page of an alloy is compared, in the same words, also those for a second phase', async () => {
  // VEC of AlCoCrFeNi by hand: 36/5, inside 6.88 to 7.84; NbMoTaW has neither Cr nor V.
  const { page } = await site.visit('/compare?alloy=AlCoCrFeNi&alloy=NbMoTaW');
  const rules = page.locator('.compare-table tr', {
    hasText: /\d{4}.*\((right:|not tested)|Usual definition/,
  });
  const rule = (name: string) => page.locator('.compare-table tr', { hasText: name }).first();
  await eventually(() => textOf(rule('Tsai et al. 2013'))).toMatch(
    /a σ phase after annealing \(not tested\)\s*× expects a σ phase after annealing\s*– of other alloys/,
  );
  expect(await textOf(rule('Yurchenko et al. 2017'))).toMatch(/expects? a Laves phase/);
  const compared = await rules.count();
  const words = (await rule('Tsai et al. 2013').locator('td').allTextContents()).slice(0, 2);
  for (const [at, alloy] of ['AlCoCrFeNi', 'NbMoTaW'].entries()) {
    await page.goto(`${site.url}/alloys/${alloy}`);
    const row = page.locator('.criteria-table tr', { hasText: 'Tsai et al. 2013' });
    await eventually(() => textOf(row.locator('.criterion-verdict'))).toContain(words[at]!.trim());
    expect(await page.locator('.criteria-table tbody tr').count()).toBe(compared);
  }
});

test('candidates of one search are compared by its limits and its expressions, under its conditions', async () => {
  const { specification } = await site.api<{ specification: { limits: object[] } }>('/demonstration');
  const { id } = await site.finish({
    ...specification,
    limits: [...specification.limits, { quantity: 'yieldPerMass', min: 1 }],
    lets: { yieldPerMass: 'yieldStrengthFcc / density' },
    conditions: { serviceTemperature: 873.15 },
  });
  const { id: list } = await site.api<Shortlist>('/shortlists', { name: 'Hot', by: 'Ana' });
  await site.api(`/shortlists/${list}/pick`, { search: id, count: 2, onePerSystem: false, by: 'Ana' });
  const { entries } = await site.api<Shortlist>(`/shortlists/${list}`);
  const [first, second] = (await Promise.all(
    entries.map(({ entry }) => site.api<Candidate>(`/searches/${id}/candidates/${entry}`)),
  )) as [Candidate, Candidate];
  const { page, wrongs } = await site.visit(`/shortlists/${list}`);
  await page.getByRole('link', { name: 'Compare the 2' }).click();
  await page.waitForURL(/serviceTemperature=873.15/);
  const line = (name: string) => page.locator('.compare-table tr', { hasText: name }).first();
  const value = (candidate: Candidate, quantity: string, decimals: number) =>
    candidate.quantities[quantity]!.toLocaleString('en-US', {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
    });
  await eventually(() => textOf(line('Limits of the search'))).toBe('Limits of the search');
  await eventually(() => textOf(line('Density ≤ 8'))).toMatch(
    new RegExp(`✓ met +${value(first, 'density', 2)}.*✓ met +${value(second, 'density', 2)}`),
  );
  await eventually(() => textOf(line('yieldPerMass = yieldStrengthFcc / density'))).toMatch(
    new RegExp(`${value(first, 'yieldPerMass', 3)}.*${value(second, 'yieldPerMass', 3)}`),
  );

  // What the search did not keep is held against the same limits: CoCrFeMnNi has 8.1 g/cm³, and its expression is read here.
  await page.getByLabel('One more alloy, at.%').fill('CoCrFeMnNi');
  await page.getByLabel('One more alloy, at.%').press('Enter');
  await eventually(() => textOf(line('Density ≤ 8'))).toMatch(/✓ met.*✓ met.*× not met/);
  const expression = line('yieldPerMass = yieldStrengthFcc / density').locator('td').nth(2);
  await eventually(() => textOf(expression)).toMatch(/\d\.\d{3}/);
  expect(wrongs).toEqual([]);

  await page.route(`**/api/v1/searches/${id}`, (route) => route.fulfill({ status: 500, body: 'no JSON' }));
  await page.reload();
  await page.getByText('What the search asks of them cannot be shown.').waitFor();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(3);
});

test('six are as many as can be compared, and what cannot be read is left out and named', async () => {
  const metals = ['CoNi', 'CoFe', 'CrFe', 'CrNi', 'FeNi', 'FeMn', 'MnNi'];
  const query = [...metals, 'Nonsense'].map((alloy) => `alloy=${alloy}`).join('&');
  const { page } = await site.visit(`/compare?${query}`);
  await eventually(() => page.locator('.compare-alloy').count()).toBe(6);
  // Binaries: the table of published alloys is mostly of three and more elements.
  const published = page.locator('.compare-table tr', { hasText: 'As published' });
  await eventually(() => textOf(published)).toContain('not in the table here');
  await page.getByText('Six alloys are as many as can be read side by side.').waitFor();
  await page.getByText('“Nonsense”, which no alloy is called').waitFor();
});

test('an empty comparison says how to begin', async () => {
  const { page } = await site.visit('/compare');
  await page.getByText('Nothing is compared yet.').waitFor();
  await page.getByLabel('First alloy, at.%').fill('Co Ni2 %');
  await page.getByLabel('First alloy, at.%').press('Enter');
  await page.getByText('is neither a symbol nor an amount').waitFor();
});

test('where the server does not answer, what is computed here stays', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/api/v1/explain', (route) => route.abort());
  await page.goto(`${site.url}/compare?alloy=CoNi&alloy=FeNi`);
  await page.getByText('What the server says of A cannot be shown.').waitFor();
  expect(await textOf(page.locator('.compare-table tr', { hasText: 'Valence' }).first())).toContain('9.50');
});

test('the strips are saved as a figure, with the letters of the alloys', async () => {
  const { page } = await site.visit('/compare?alloy=CoCrFeMnNi&alloy=NbMoTaW');
  const figure = page.getByRole('figure', { name: 'On the scale of published alloys' });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    figure.getByRole('button', { name: /as SVG$/ }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('comparison.svg');
  // A sheet is narrower than the screen, and nothing is drawn anew for it: the figure shrinks, whole.
  await page.addInitScript('ResizeObserver = class { observe() {} unobserve() {} disconnect() {} }');
  await page.reload();
  await page.locator('.strip-mark').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 680, height: 1000 });
  const ends = (what: string) =>
    page.evaluate<number>(`document.querySelector('${what}').getBoundingClientRect().right`);
  await eventually(async () => (await ends('.compare-page .plot')) <= (await ends('.compare-page'))).toBe(
    true,
  );
  expect(await page.locator('.conditions').isVisible()).toBe(false);
});

test('six alloys stand side by side on 1024 px', async () => {
  const six = ['CoCrFeMnNi', 'CoCrFeNi', 'NbMoTaW', 'AlCoCrFeNi', 'Al0.3CoCrFeNi', 'HfNbTaTiZr'];
  const address = `/compare?${six.map((alloy) => `alloy=${alloy}`).join('&')}`;
  const { page } = await site.visit(address, { viewport: { width: 1024, height: 768 } });
  const table = page.locator('.compare-table');
  await table.locator('.compare-alloy').nth(5).waitFor();
  await page.locator('.strip-mark').first().waitFor();
  expect(await table.evaluate((one) => one.parentElement!.scrollWidth - one.parentElement!.clientWidth)).toBe(
    0,
  );
  // Each value within its own column.
  const wide = await table
    .locator('td')
    .evaluateAll((cells) =>
      cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent),
    );
  expect(wide).toEqual([]);
});

test('on a phone six alloys are read line by line, and nothing is wider than the screen', async () => {
  const query = ['CoCrFeMnNi', 'CoCrFeNi', 'NbMoTaW', 'AlCoCrFeNi', 'HfNbTaTiZr', 'CoCrCuFeMnNi'];
  const { page, wrongs } = await site.visit(`/compare?${query.map((one) => `alloy=${one}`).join('&')}`, {
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  const card = (name: string) => page.locator('.compare-card', { hasText: name }).first();
  // VEC by hand: 40/5, 33/4, 22/4, 36/5 with Al 3, 22/5 with Hf 4, Nb 5, Ta 5, Ti 4, Zr 4, and 51/6.
  await eventually(() => textOf(card('Valence electron concentration'))).toMatch(
    /≠≠ much.*A\s+8\.00.*B\s+8\.25.*C\s+5\.50.*D\s+7\.20.*E\s*▼lowest\s+4\.40.*F\s*▲highest\s+8\.50/,
  );
  await eventually(() => textOf(card('Likely'))).not.toContain('…');
  await page.getByText('The numbers as a table').tap();
  const numbers = page.getByRole('row', { name: /^Valence electron concentration/ });
  expect(await textOf(numbers)).toContain('8.00');
  expect(await page.evaluate('document.documentElement.scrollWidth <= 390')).toBe(true);
  const sideways = await page.evaluate(`[...document.querySelectorAll('.compare-page *')].filter(
    (one) => one.checkVisibility({ contentVisibilityAuto: true }) && /auto|scroll/.test(getComputedStyle(one).overflowX) && one.scrollWidth > one.clientWidth).map((one) => one.className)`);
  expect(sideways).toEqual([]);
  await page.getByRole('button', { name: 'Take F out' }).tap();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(5);
  expect(wrongs).toEqual([]);
});
