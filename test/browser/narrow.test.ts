import type { CandidatePage } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

test('names of one long word take lines, not width', async () => {
  const word = 'Cobaltfree'.repeat(11);
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish({ ...specification, name: word });
  const list = await site.api<{ id: string }>('/shortlists', { name: word, by: 'Anna'.repeat(14) });
  const by = 'Anna'.repeat(14);
  await site.api(`/shortlists/${list.id}/pick`, { search: id, count: 2, onePerSystem: false, by });
  const { page } = await site.visit('/shortlists', phone);
  for (const [path, place] of [
    ['/shortlists', '.short-lists a'],
    [`/shortlists/${list.id}`, '.short-entry'],
    [`/searches/${id}`, '.candidate-card'],
    ['/data/versions', '.data-version-searches a'],
  ] as const) {
    await page.goto(site.url + path);
    await page.locator(place).first().waitFor();
    expect(await page.evaluate('document.documentElement.scrollWidth'), path).toBe(390);
  }
});

test('a search is asked, looked through and read on a phone, and nothing is wider than the screen', async () => {
  const { page, wrongs } = await site.visit('/ask', phone);
  const fits = () => page.evaluate('document.documentElement.scrollWidth <= 390');
  await page.locator('.card').first().waitFor();
  expect(await fits()).toBe(true);
  const iron = await page.locator('.card[data-symbol="Fe"]').boundingBox();
  expect(iron!.width).toBeGreaterThanOrEqual(40);
  expect(iron!.height).toBeGreaterThanOrEqual(40);

  for (const symbol of ['Al', 'Co', 'Cr', 'Ni', 'Ti'])
    await page.locator(`.card[data-symbol="${symbol}"]`).tap();
  await page.getByRole('radio', { name: 'requires' }).check();
  await page.locator('.card[data-symbol="Fe"]').tap();
  await eventually(() => textOf(page.locator('.size-live'))).toContain('Five of Al Co Cr Fe Ni Ti, with Fe');
  expect(await textOf(page.locator('.size-strip'))).toMatch(/[\d,]+ compositions; (?:about|under)/);
  expect(await fits()).toBe(true);
  await page.getByRole('button', { name: 'Add a limit' }).tap();
  await page.getByLabel('Limit 1: quantity').selectOption('valenceElectronConcentration');
  await page.getByLabel('at least', { exact: true }).last().fill('6,5');
  await eventually(() => textOf(page.locator('.size-live'))).toContain(
    'valence electron concentration ≥ 6.5',
  );
  await page.getByRole('button', { name: 'Start search' }).tap();

  await page.locator('.candidate-card').first().waitFor();
  expect(await fits()).toBe(true);
  await page.getByLabel('Order by').selectOption('density');
  await page.waitForURL(/order=density/);
  const id = new URL(page.url()).pathname.split('/').at(-1);
  const { items } = await site.api<CandidatePage>(`/searches/${id}/candidates?order=density&limit=1`);
  const lightest = Object.keys(items[0]!.composition).sort();
  await eventually(async () =>
    (await page.locator('.candidate-card .share-symbol').allTextContents()).slice(0, lightest.length),
  ).toEqual(lightest);

  await page.locator('.candidate-card a').first().tap();
  await page.locator('.quantity').first().waitFor();
  expect(await fits()).toBe(true);
  await page.goto(`${site.url}/searches`);
  await page.locator('.search-line').first().waitFor();
  expect(await fits()).toBe(true);
  expect(wrongs).toEqual([]);
});

test.each([768, 1024, 1152])(
  'between phone and desk, at %i pixels, a pool fits, and so do numbers beside a composition',
  async (width) => {
    const { specification } = await site.api<{ specification: object }>('/demonstration');
    const { page } = await site.visit('/ask', { viewport: { width, height: 900 } });
    await page.getByRole('button', { name: 'As the demonstration' }).click();
    await page.locator('.pool tbody tr').nth(8).waitFor();
    const edge = width - 20;
    for (const place of ['.pool tbody tr', '.card[data-symbol="Kr"]', '.card[data-symbol="Lu"]']) {
      const box = await page.locator(place).first().boundingBox();
      expect(box!.x + box!.width).toBeLessThanOrEqual(edge);
    }
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
    const line = page.locator('.pool tbody tr').first();
    const parts = ['th', '.pool-part', '.pool-min', '.pool-max', '.pool-out'].map((part) =>
      line.locator(part),
    );
    const boxes = await Promise.all(parts.map((part) => part.boundingBox()));
    const starts = boxes.map((box) => box!.x);
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    for (const box of boxes) expect(Math.abs(box!.y - boxes[0]!.y)).toBeLessThan(20);

    // Shares with a decimal are the widest.
    const { id } = await site.finish({ ...specification, fractions: { step: 2.5, min: 5, max: 35 } });
    await page.goto(`${site.url}/searches/${id}`);
    await page.locator('.candidates tbody tr[data-index]').first().waitFor();
    const second = await page.locator('.candidates thead th').nth(3).boundingBox();
    expect(second!.x + second!.width).toBeLessThanOrEqual(edge);
    const shares = page.locator('.candidate .shares').first();
    const row = await page.locator('.candidate').first().boundingBox();
    const inside = await shares.boundingBox();
    expect(inside!.height).toBeLessThanOrEqual(row!.height);

    // Of systems the name stays in sight.
    await page.goto(`${site.url}/searches/${id}?view=systems`);
    const name = page.locator('.systems tbody th').first();
    await name.waitFor();
    await name.evaluate('(cell) => { cell.closest(".scroll-x").scrollLeft = 10_000; }');
    expect((await name.boundingBox())!.x).toBeGreaterThanOrEqual(0);
  },
);

test('a candidate is printed black on white, on A4, with every formula, without buttons', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id } = await site.finish(specification);
  const { items } = await site.api<CandidatePage>(`/searches/${id}/candidates?limit=1`);
  const composition = Object.entries(items[0]!.composition).flat().join('');
  const { page } = await site.visit(`/searches/${id}/candidates/${composition}`, { colorScheme: 'dark' });
  await page.locator('.quantity').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  const quantities = await site.api<object[]>('/quantities');
  const formulas = page.locator('.formula');
  expect(await formulas.count()).toBe(quantities.length);
  for (const formula of await formulas.all()) expect(await formula.isVisible()).toBe(true);
  expect(await page.getByRole('button').count()).toBe(0);
  expect(await page.evaluate("getComputedStyle(document.querySelector('h1')).color")).toBe('rgb(0, 0, 0)');
  expect(await textOf(page.locator('.provenance'))).toContain(
    `${site.url}/searches/${id}/candidates/${composition}`,
  );
  expect(await page.locator('.print-only').isVisible()).toBe(true);
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  // 595 × 842 points are A4.
  expect(pdf).toMatch(/\/MediaBox \[0 0 59[45](?:\.\d+)? 84[12](?:\.\d+)?\]/);
});
