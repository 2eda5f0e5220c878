import { readFile } from 'node:fs/promises';
import type {
  CandidatePage,
  CandidateValues,
  ElementUse,
  SearchDistributions,
  SearchView,
} from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let search: SearchView;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = await site.finish(specification);
});
afterAll(() => site?.close());

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const tall = { viewport: { width: 1440, height: 1600 } };
const open = (address: string, options = {}) =>
  site.visit(`/searches/${search.id}${address}`, { ...tall, ...options });
const ask = <T>(what: string) => site.api<T>(`/searches/${search.id}/${what}`);
const stage = (page: Page) => page.locator('.scatter-stage');
const spoken = (page: Page) => stage(page).getAttribute('aria-valuetext');
const selectedRows = (page: Page) => page.locator('.selected .candidates tbody tr[data-index]');
const count = (value: number) => value.toLocaleString('en-US');

test('each view has an address of its own, which keeps the filters, and Back leads to the one before', async () => {
  const { page, wrongs } = await open('?has=Mo');
  const { meeting } = await ask<CandidateValues>('values?has=Mo&limit=1');
  await page.getByText(`${count(meeting)} of the ${count(search.kept)} kept meet the filter.`).waitFor();
  const views = page.getByRole('navigation', { name: 'Views of the result' });
  for (const [name, part] of [
    ['Scatter', '.scatter svg .axis'],
    ['Distributions', '.histogram .bar'],
    ['Elements', '.figure .bar'],
    ['Systems', '.systems tbody tr'],
    ['Unexplored', '.systems tbody tr'],
  ] as const) {
    await views.getByRole('link', { name }).click();
    await page.locator(part).first().waitFor();
    expect(await views.locator('[aria-current="page"]').textContent()).toBe(name);
    expect(page.url()).toContain('has=Mo');
  }
  await page.reload();
  await page.locator('.systems tbody tr').first().waitFor();
  await page.goBack();
  await page.waitForURL(/view=systems/);
  expect(await views.locator('[aria-current="page"]').textContent()).toBe('Systems');
  expect(wrongs).toEqual([]);
});

test('a scatter is walked by arrow keys; each point tells its values, and Enter opens its candidate', async () => {
  const { page, wrongs } = await open('?view=scatter&x=density&y=meltingTemperature&colour=cost');
  await page.locator('.scatter svg .axis').first().waitFor();
  const titles = await page.locator('.scatter .axis-title').allTextContents();
  expect(titles).toEqual(['Density ρ (g/cm³)', 'Melting temperature Tm (K)']);
  await stage(page).focus();
  expect(await spoken(page)).toBe('no point');
  await page.keyboard.press('Home');
  const { items } = await ask<CandidatePage>('candidates?limit=1');
  const [best] = items;
  expect(await spoken(page)).toBe(
    `rank 1: density ${best!.quantities.density!.toFixed(2)} g/cm³, melting temperature ${best!.quantities.meltingTemperature!.toFixed(0)} K, cost ${best!.quantities.cost!.toFixed(2)} EUR/kg`,
  );
  const density = async () => Number(/density ([\d.]+)/.exec((await spoken(page)) ?? '')?.[1]);
  const before = await density();
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowLeft');
  expect(await density()).toBeLessThan(before);
  await page.keyboard.press('Home');
  await page.keyboard.press('PageDown');
  expect(await spoken(page)).toMatch(/^rank 2:/);
  await page.keyboard.press('PageUp');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/candidates\/[A-Z]/);
  expect(wrongs).toEqual([]);
});

test('Shift and arrows select points; the table below lists what lies in the rectangle', async () => {
  const { page } = await open('?view=scatter&x=density&y=meltingTemperature');
  await page.locator('.scatter svg .axis').first().waitFor();
  await stage(page).focus();
  await page.keyboard.press('Home');
  for (const key of ['ArrowLeft', 'ArrowLeft', 'ArrowDown']) await page.keyboard.press(`Shift+${key}`);
  await page.waitForURL(/brush=/);
  const [left, right, bottom, top] = new URL(page.url()).searchParams.get('brush')!.split(',');
  const range = `min.density=${left}&max.density=${right}&min.meltingTemperature=${bottom}&max.meltingTemperature=${top}`;
  const { meeting } = await ask<CandidateValues>(`values?${range}&limit=1`);
  expect(meeting).toBeGreaterThan(1);
  await page.getByText(`${count(meeting)} selected.`).waitFor();
  const { items } = await ask<CandidatePage>(`candidates?${range}&limit=5`);
  await eventually(async () =>
    (await selectedRows(page).locator('td:first-child').allTextContents())
      .slice(0, 5)
      .map((text) => text.replace(',', '')),
  ).toEqual(items.map(({ rank }) => String(rank)));
  await page.keyboard.press('Escape');
  await eventually(() => page.url()).not.toContain('brush=');
});

test('a rectangle is drawn with the mouse, and becomes filters', async () => {
  const { page, wrongs } = await open('?view=scatter&x=density&y=meltingTemperature');
  await page.locator('.scatter svg .axis').first().waitFor();
  const box = (await stage(page).boundingBox())!;
  await page.mouse.move(box.x + box.width * 0.55, box.y + box.height * 0.3);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.7, box.y + box.height * 0.5, { steps: 4 });
  await page.mouse.move(box.x + box.width * 0.9, box.y + box.height * 0.7, { steps: 4 });
  await page.mouse.up();
  await page.waitForURL(/brush=/);
  await selectedRows(page).first().waitFor();
  const said = await textOf(page.locator('.selected [role="status"]').first());
  await page.getByRole('button', { name: 'Show only these' }).click();
  await page.waitForURL(/min\.density=/);
  const left = /([\d,]+) selected/.exec(said)![1]!;
  await page.getByText(`${left} of the ${count(search.kept)} kept meet all filters.`).waitFor();
  expect(await page.getByRole('list', { name: 'Filters' }).getByRole('listitem').count()).toBe(2);
  expect(wrongs).toEqual([]);
});

test('a rectangle can be typed, in the reader’s own decimal sign, and what is wrong is said', async () => {
  const { page } = await open('?view=scatter&x=density&y=meltingTemperature', { locale: 'de-DE' });
  const form = page.getByRole('form', { name: 'Select by range' });
  const fill = async (texts: string[]) => {
    for (const [place, text] of texts.entries()) await form.getByRole('textbox').nth(place).fill(text);
    await form.getByRole('button', { name: 'Select' }).click();
  };
  await fill(['7,9', '7,5', '1800', '1950']);
  await form.getByText('exchange the two values').waitFor();
  await fill(['7,5', '', '1800', '1950']);
  await form.getByText('Write both ends of both ranges.').waitFor();
  await fill(['7,5', '7,9', '1800', '1950']);
  await page.waitForURL(/brush=7\.5(?:,|%2C)7\.9(?:,|%2C)1800(?:,|%2C)1950/);
  await selectedRows(page).first().waitFor();
});

test('the pointer reads the nearest point, and a published alloy tells its phases and source', async () => {
  const { page } = await open('?view=scatter&x=sizeMismatch&y=density');
  await page.locator('.layer-mark').nth(2).waitFor();
  const { x, y, width, height } = (await page.locator('.scatter svg > g .layer-mark').last().boundingBox())!;
  await page.mouse.move(x + width / 2, y + height / 2);
  await eventually(() => textOf(page.locator('.scatter-readout'))).toMatch(
    /Published \w+.*; size mismatch [\d.]+ %.*doi 10\./,
  );
});

test('a quantity with few huge values is drawn on a logarithmic axis, which can be put back', async () => {
  const { page } = await open('?view=scatter&x=density&y=omega');
  const numbers = async () =>
    (await page.locator('.scatter .axis').last().locator('.axis-number').allTextContents()).join(' ');
  await eventually(numbers).toMatch(/1 (?:2 5 )?10/);
  const omega = page.getByRole('group', { name: /^Up/ });
  expect(await omega.getByRole('checkbox').isChecked()).toBe(true);
  await omega.getByRole('checkbox').uncheck();
  await page.waitForURL(/scales=/);
  await eventually(numbers).not.toMatch(/1 (?:2 5 )?10/);
});

test('a front is drawn where both axes have a better side; where the search names none, a person does', async () => {
  const { page } = await open('?view=scatter&x=density&y=omega');
  const better = page.getByLabel('Better values of Entropy–enthalpy ratio');
  await page.getByText('No Pareto front: say above which values').waitFor();
  expect(await better.inputValue()).toBe('none');
  expect(await page.getByLabel('Better values of Density').inputValue()).toBe('low');
  expect(await page.locator('.scatter .front-line').count()).toBe(0);
  const table = page.getByText('The Pareto front as a table');
  expect(await table.count()).toBe(0);
  await better.selectOption('high');
  await page.getByText(/The Pareto front is that of the kept candidates: \d+ corner/).waitFor();
  expect(await page.locator('.scatter path.front-line').count()).toBe(1);
  expect(await table.count()).toBe(1);
});

test('a figure is saved as SVG and PNG with title, units, caption and the version of the data', async () => {
  const { page, wrongs } = await open('?view=scatter&x=density&y=meltingTemperature&colour=cost');
  await page.locator('.scatter svg .axis').first().waitFor();
  const save = async (format: string) => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: new RegExp(`as ${format}$`) }).click(),
    ]);
    expect(file.suggestedFilename()).toMatch(
      new RegExp(
        `^cobalt-free-impeller-alloy-${search.id}-meltingTemperature-density\\.${format.toLowerCase()}$`,
      ),
    );
    return readFile(await file.path());
  };
  const svg = (await save('SVG')).toString();
  for (const words of [
    'Melting temperature against density',
    'Density ρ (g/cm³)',
    'Cost p (EUR/kg)',
    `data version ${search.dataVersion}`,
    'Prices are invented',
    'data:image/png;base64,',
  ]) {
    expect(svg).toContain(words);
  }
  // Drawing programs know neither the page's style sheets nor oklch().
  expect(svg).not.toMatch(/oklch|var\(|class=/);
  const wellFormed = await page.evaluate<boolean>(
    `new DOMParser().parseFromString(${JSON.stringify(svg)}, 'image/svg+xml').querySelector('parsererror') === null`,
  );
  expect(wellFormed).toBe(true);
  // On white and in the light colours, the points of the canvas too, whatever the screen shows.
  expect(svg).toContain('<rect width="100%" height="100%" fill="#ffffff"/>');
  const ground = () => page.evaluate('getComputedStyle(document.documentElement).backgroundColor');
  const light = await ground();
  await page.emulateMedia({ colorScheme: 'dark' });
  await eventually(ground).not.toBe(light);
  expect((await save('SVG')).toString() === svg).toBe(true);
  const png = await save('PNG');
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  const [width] = /(?<=<svg[^>]* width=")[\d.]+/.exec(svg)!;
  expect(png.readUInt32BE(16)).toBe(2 * Math.floor(Number(width)));
  expect(wrongs).toEqual([]);
});

test('distributions show the grid, what passed and what was kept, with the edges of limits, and read out', async () => {
  const { page, wrongs } = await open('?view=distributions');
  const { quantities, sample } = await ask<SearchDistributions>('distributions');
  await page
    .getByText(`A sample of ${count(sample)} compositions of the grid, each equally likely`)
    .waitFor();
  expect(await page.locator('.histogram').count()).toBe(quantities.length);
  const density = page.getByRole('figure', { name: 'Density' });
  expect(await textOf(density)).toMatch(/at most 8 g\/cm³.*All compositions.*Passing.*Kept/s);
  const bars = density.getByRole('slider');
  await bars.focus();
  await page.keyboard.press('End');
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  expect(await bars.getAttribute('aria-valuetext')).toMatch(
    /^[\d.]+ to [\d.]+ g\/cm³: .+ of all compositions \(sample\), .+ of passing \(sample\), .+ of kept$/,
  );
  // What was drawn has an error, what was counted has none.
  for (let step = 0; step < 25; step += 1) await page.keyboard.press('ArrowRight');
  expect(await bars.getAttribute('aria-valuetext')).toMatch(
    /: [\d.]+ % ± [\d.]+ of all compositions \(sample\), .+, [^±,]+ of kept$/,
  );
  await density.getByText(/^\d+ compositions of the sample lie outside the axis/).waitFor();
  await density.getByText('The numbers as a table').click();
  const spread = quantities.find(({ quantity }) => quantity === 'density')!;
  const filled = spread.edges
    .slice(1)
    .filter((_, bin) => [spread.grid!, spread.passing!, spread.kept].some(({ counts }) => counts[bin]! > 0));
  expect(await density.locator('tbody tr').count()).toBe(filled.length);
  await page.getByLabel('Another quantity').selectOption('omega');
  await page.getByRole('figure', { name: 'Entropy–enthalpy ratio' }).waitFor();
  await page.reload();
  await page.getByRole('figure', { name: 'Entropy–enthalpy ratio' }).waitFor();
  // Side by side their axes are level, however many edges of limits each names.
  const heights = page.locator('.distributions').first().locator('.histogram svg');
  expect(new Set(await heights.evaluateAll((all) => all.map((svg) => svg.getAttribute('height')))).size).toBe(
    1,
  );
  expect(wrongs).toEqual([]);
});

test('elements tell how often they are there and how much of them, by keys and as a table', async () => {
  const { page } = await open('?view=elements');
  const { elements, meeting } = await ask<ElementUse>('element-use');
  const bars = page.getByRole('slider', { name: /Elements in the candidates/ });
  await bars.focus();
  await page.keyboard.press('ArrowDown');
  const [first] = elements;
  expect(await bars.getAttribute('aria-valuetext')).toContain(
    `${first!.symbol} is in ${count(first!.candidates)} candidates`,
  );
  await page.keyboard.press('End');
  for (let step = 0; step < 2; step += 1) await page.keyboard.press('ArrowRight');
  const last = elements.at(-1)!;
  const five = last.amounts.find(({ atomicPercent }) => atomicPercent === 5)!;
  expect(await bars.getAttribute('aria-valuetext')).toContain(
    `in ${count(five.candidates)} of them (${((100 * five.candidates) / last.candidates).toFixed(five.candidates === last.candidates ? 0 : 1)} %) around 5 at.%`,
  );
  await page.getByText('The numbers as a table').click();
  const row = page.locator('.figure-table tbody tr', {
    has: page.getByRole('rowheader', { name: last.symbol, exact: true }),
  });
  expect(await textOf(row)).toContain(`${((100 * last.candidates) / meeting).toFixed(1)} %`);
});

interface Systems {
  items: { system: string; kept: number; best: { rank: number; composition: Record<string, number> } }[];
  explored: { kept: number; keptPublished: number; publishedNotKept: unknown[] };
}

test('systems stand in the order of their best; the unexplored are those that nothing is published of', async () => {
  const { page, wrongs } = await open('?view=systems');
  const { items, explored } = await ask<Systems>('systems');
  await page.locator('.systems tbody tr').first().waitFor();
  const systems = () => page.locator('.systems tbody th').allTextContents();
  expect(await systems()).toEqual(items.map(({ system }) => system));
  expect(await page.locator('.systems tbody tr', { hasText: 'none in the table here' }).count()).toBe(
    explored.kept - explored.keptPublished,
  );

  await page.getByRole('link', { name: 'Unexplored' }).click();
  const unexplored = await ask<Systems>('systems?explored=no');
  await eventually(systems).toEqual(unexplored.items.map(({ system }) => system));
  const words = await textOf(page.locator('.look'));
  expect(words).toContain(
    `${count(explored.kept - explored.keptPublished)} of the ${count(explored.kept)} systems`,
  );
  expect(words).toMatch(/table of published alloys here is a part of what is published/);
  expect(words).toMatch(/does not prove that nobody has melted one/);
  const saved = page.waitForEvent('download');
  await page.getByRole('link', { name: 'CSV', exact: true }).click();
  const file = await readFile(await (await saved).path(), 'utf8');
  const lines = file.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  expect(lines[0]).toMatch(/^place,system,kept,best rank,best composition \(at\.%\),.*density \(g\/cm3\)/);
  expect(lines.slice(1).map((line) => line.split(',')[1])).toEqual(
    unexplored.items.map(({ system }) => system),
  );
  await page.locator('.systems tbody a').first().click();
  await page.waitForURL(/\/candidates\//);
  expect(wrongs).toEqual([]);
});

const views = ['scatter', 'distributions', 'elements', 'systems', 'unexplored'];
const parts: Record<string, string> = {
  scatter: '.scatter svg .axis',
  distributions: '.histogram .bar',
  elements: '.figure .bar',
  systems: '.systems tbody tr, .system-cards li',
  unexplored: '.systems tbody tr, .system-cards li',
};
const routes: Record<string, string> = {
  scatter: 'values',
  distributions: 'distributions',
  elements: 'element-use',
  systems: 'systems',
  unexplored: 'systems',
};

test.each(views)('%s on a phone is no wider than the screen', async (view) => {
  const { page, wrongs } = await open(`?view=${view}`, phone);
  await page.locator(parts[view]!).first().waitFor();
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
  expect(wrongs).toEqual([]);
});

test.each(views)('%s says when the filters leave nothing, and lets go', async (view) => {
  const { page } = await open(`?view=${view}&max.density=1`);
  await page.getByText('None of the kept candidates meets these filters.').waitFor();
  await page.getByRole('button', { name: 'Show all that were kept' }).click();
  await page.locator(parts[view]!).first().waitFor();
  expect(page.url()).toContain(`view=${view}`);
});

test.each(views)('%s says what it waits for, and what to do when it fails', async (view) => {
  const { page } = await site.visit('/nowhere');
  let answer = () => {};
  const late = new Promise<void>((resolve) => {
    answer = resolve;
  });
  let fails = true;
  await page.route(new RegExp(`/searches/${search.id}/${routes[view]}\\?(?!limit=1$)`), async (route) => {
    await late;
    if (!fails) return route.continue();
    return route.fulfill({
      status: 507,
      contentType: 'application/problem+json',
      body: JSON.stringify({
        code: 'store/full',
        detail: 'The disk is full.',
        faults: [{ code: 'store/full', pointer: '', detail: 'The disk is full.', remedy: 'Free space.' }],
      }),
    });
  });
  await page.goto(`${site.url}/searches/${search.id}?view=${view}`);
  await page.locator('.waiting').waitFor();
  expect(await textOf(page.locator('.waiting'))).toMatch(/ …$/);
  answer();
  const failed = page.locator('.look [role="alert"]', { hasText: 'cannot be shown' });
  await failed.waitFor();
  expect(await textOf(failed)).toMatch(/The disk is full\. Free space\./);
  fails = false;
  await failed.getByRole('button', { name: 'Ask again' }).click();
  await page.locator(parts[view]!).first().waitFor();
});

test('where only the front or the published alloys cannot be had, the scatter is drawn and says what lacks', async () => {
  const { page } = await site.visit('/nowhere');
  for (const [route, words] of [
    ['trade-off', 'The Pareto front cannot be shown.'],
    ['published', 'The layer of published alloys and own melts cannot be shown.'],
  ] as const) {
    const pattern = new RegExp(`/searches/${search.id}/${route}\\?`);
    await page.route(pattern, (one) => one.fulfill({ status: 500, body: 'broken' }));
    await page.goto(`${site.url}/searches/${search.id}?view=scatter`);
    await page.getByText(words).waitFor();
    await page.locator('.scatter svg .axis').first().waitFor();
    await page.unroute(pattern);
    await page.getByRole('button', { name: 'Ask again' }).click();
    await page.getByText(words).waitFor({ state: 'hidden' });
  }
});

test('while the server does not answer, what was drawn stays and says that it is of before', async () => {
  const { page } = await open('?view=scatter&x=density&y=meltingTemperature');
  await page.locator('.scatter svg .axis').first().waitFor();
  await page.route('**/api/**', (route) => route.abort());
  await page.getByRole('form', { name: 'Add a filter' }).getByRole('combobox').selectOption('density');
  await page.getByRole('form', { name: 'Add a filter' }).getByLabel('at most').fill('7.8');
  await page.getByRole('button', { name: 'Add filter' }).click();
  await page.locator('.banners').getByText('The server does not answer').waitFor();
  await page.getByText(/values of before; newer ones could not be fetched/).waitFor();
  expect(await page.locator('.look-stale .scatter').count()).toBe(1);
  await page.unroute('**/api/**');
  const { meeting } = await ask<CandidateValues>('values?max.density=7.8&limit=1');
  await page.getByText(`${count(meeting)} of the ${count(search.kept)} kept meet the filter.`).waitFor();
  await eventually(() => page.locator('.look-stale').count()).toBe(0);
});

test('columns are chosen by group, and the usual ones come back', async () => {
  const { page } = await open('');
  await page.getByText(/^Columns \(/).click();
  const groups = page.getByRole('group', { name: 'Stiffness and strength' });
  await groups.getByRole('checkbox', { name: 'Stiffness and strength' }).check();
  await page.waitForURL(/columns=/);
  const heads = () => textOf(page.locator('.candidates thead'));
  for (const name of ['Shear modulus', 'Young’s modulus', 'Yield strength, if bcc'])
    expect(await heads()).toContain(name);
  await groups.getByRole('checkbox', { name: 'Shear modulus' }).uncheck();
  expect(await heads()).not.toContain('Shear modulus');
  await page.getByRole('button', { name: 'The usual ones' }).click();
  await eventually(heads).not.toContain('Yield strength');
  await page.goto(`${site.url}/searches/${search.id}`);
  await page.locator('.candidates thead').waitFor();
  expect(await heads()).not.toContain('Yield strength');
});

test('sentences and numbers have one decimal sign, that of the reader', async () => {
  const { page } = await open('?view=distributions', { locale: 'de-DE' });
  await page.locator('.histogram .bar').first().waitFor();
  // What is folded away holds the specification: data have a point.
  const words = (await page.locator('main').allInnerTexts()).join().replaceAll('\u00a0', ' ');
  expect(words).toContain('size mismatch ≤ 6,6 %');
  expect(words).toContain('at most 6,6 %');
  // What is left with a point are counts in groups of three digits.
  expect(words.match(/\d\.\d{1,2}(?!\d)/g)).toBeNull();
});

test('the spreadsheet holds what the filters leave', async () => {
  const { page } = await open('?has=Mo');
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'spreadsheet' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/\.xlsx$/);
  expect((await readFile(await file.path())).subarray(0, 2).toString()).toBe('PK');
});

test('a running search shows the best so far and how it became better', async () => {
  const { id } = await site.api<{ id: string }>('/searches', {
    name: 'A long one',
    elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Ti', 'V', 'W', 'Zr'] },
    components: { min: 7, max: 8 },
    fractions: { step: 2 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  });
  const { page, wrongs } = await site.visit(`/searches/${id}`);
  const best = page.getByRole('region', { name: 'Best so far' });
  await eventually(() => textOf(best)).toMatch(/density [\d.]+ g\/cm³/);
  const improved = best.getByRole('slider', { name: /How the best became better/ });
  await improved.waitFor();
  await improved.focus();
  await page.keyboard.press('ArrowRight');
  expect(await improved.getAttribute('aria-valuetext')).toMatch(/^after [\d,]+ compositions: [\d.]+$/);
  expect(await best.locator('.axis-title').allTextContents()).toEqual([
    'Density ρ (g/cm³)',
    'Compositions tested',
  ]);
  await site.api(`/searches/${id}/cancel`, {});
  expect(wrongs).toEqual([]);
});

test('members of the Pareto front that a search asked for are marked, and shown alone on wish', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const front = [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'meltingTemperature', prefer: 'high' },
  ];
  const { id } = await site.finish({ ...specification, front });
  const { page, wrongs } = await site.visit(`/searches/${id}`);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  const { meeting } = await site.api<CandidateValues>(`/searches/${id}/values?front=yes&limit=1`);
  expect(meeting).toBeGreaterThan(1);
  await page.getByRole('checkbox', { name: /Only the Pareto front of low density and high melting/ }).check();
  await page.waitForURL(/front=yes/);
  await page.getByText(`${count(meeting)} of the`).waitFor();
  await eventually(() => page.locator('.candidates tbody tr[data-index]').count()).toBe(
    Math.min(meeting, 32),
  );
  expect(await page.locator('.candidates .front-mark').count()).toBe(
    await page.locator('.candidates tbody tr[data-index]').count(),
  );
  await page.getByRole('button', { name: 'Drop the filter On the Pareto front of the search' }).click();
  await eventually(() => page.url()).not.toContain('front=yes');
  expect(wrongs).toEqual([]);
});

test('figures of merit of one’s own are columns, orders, filters and axes like all others', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish({
    ...specification,
    lets: { heatPerMass: 'meltingTemperature / density' },
  });
  const { page, wrongs } = await site.visit(`/searches/${id}?columns=density,heatPerMass`, tall);
  await page
    .locator('.candidates thead')
    .getByRole('button', { name: /heatPerMass/ })
    .click();
  await page.waitForURL(/order=heatPerMass/);
  const { items } = await site.api<CandidatePage>(`/searches/${id}/candidates?order=heatPerMass&limit=1`);
  await eventually(() => page.locator('.candidates tbody tr[data-index="0"] td').first().textContent()).toBe(
    count(items[0]!.rank),
  );
  await page.goto(`${site.url}/searches/${id}?view=scatter&x=heatPerMass&y=density`);
  await page.locator('.scatter svg .axis').first().waitFor();
  expect(await page.locator('.scatter .axis-title').first().textContent()).toContain('heatPerMass');
  await stage(page).focus();
  for (const key of ['Home', 'Shift+ArrowRight', 'Shift+ArrowRight']) await page.keyboard.press(key);
  await page.getByRole('button', { name: 'Show only these' }).click();
  await page.waitForURL(/min\.heatPerMass=/);
  await page.getByText(/of the [\d,]+ kept meet all filters/).waitFor();
  expect(wrongs).toEqual([]);
});

test('a melt that was recorded lies in the scatter with a mark of its own, and leads to its page', async () => {
  const [unexplored] = (await ask<Systems>('systems?explored=no')).items;
  const elements = await site.api<{ symbol: string; atomicMass: number }[]>('/elements');
  const melt = await site.api<{ id: string }>('/melts', {
    ...{
      name: 'First trial',
      date: '2026-11-20',
      charge: null,
      ingot: null,
      process: 'arc melting',
      anneal: null,
    },
    // As much of each element as its best candidate has, so that the melt lies beside it.
    weighed: Object.entries(unexplored!.best.composition).map(([material, share]) => ({
      material,
      mass: (share * elements.find(({ symbol }) => symbol === material)!.atomicMass) / 100,
    })),
    ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: null, density: null, notes: '' },
  });
  const { page, wrongs } = await open('?view=scatter&x=density&y=meltingTemperature&published=none');
  await page.locator('.scatter .legend', { hasText: 'Own melts' }).waitFor();
  expect(await textOf(page.locator('.scatter .legend'))).not.toContain('Published alloys');
  const mark = page.locator('.scatter svg > g:not(.legend) .layer-mark');
  const { x, y, width, height } = (await mark.first().boundingBox())!;
  await page.mouse.move(x + width / 2, y + height / 2);
  await eventually(() => textOf(page.locator('.scatter-readout'))).toMatch(
    /Own melt “First trial”, FCC; density/,
  );
  await page.getByRole('link', { name: 'Open the melt' }).click();
  await page.waitForURL(new RegExp(`/melts/${melt.id}$`));
  await page.goto(`${site.url}/searches/${search.id}?view=unexplored`);
  await page.locator('.systems tbody tr').first().waitFor();
  expect(await page.locator('.systems tbody th').allTextContents()).not.toContain(unexplored!.system);
  expect(wrongs).toEqual([]);
});
