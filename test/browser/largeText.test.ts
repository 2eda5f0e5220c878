import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CandidatePage, Shortlist } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSite, type Site } from './site.ts';

let site: Site;
/** what there is to be looked at, by the name of its place in an address */
let known: { search: string; composition: string; sheet: string; melt: string; list: string };

beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id: search } = await site.finish(specification);
  const { items } = await site.api<CandidatePage>(`/searches/${search}/candidates?limit=1`);
  const composition = Object.entries(items[0]!.composition).flat().join('');
  const name = 'First trial';
  const { number: sheet } = await site.api<{ number: string }>('/charge-sheets', {
    ...{ name, composition: 'CoCrFeMnNi', mass: 50, resolution: 0.001, loss: { Mn: 1.5 } },
  });
  const { id: melt } = await site.api<{ id: string }>('/melts', {
    ...{ name, date: '2026-11-25', charge: sheet, ingot: 49.8, process: 'arc melting', anneal: null },
    weighed: ['Co', 'Cr', 'Fe', 'Mn', 'Ni'].map((material) => ({ material, mass: 10 })),
    ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: 152, density: 7.94, notes: '' },
  });
  const by = 'Ana';
  const { id: list } = await site.api<Shortlist>('/shortlists', { name: 'To be melted in December', by });
  await site.api(`/shortlists/${list}/pick`, { search, count: 2, onePerSystem: true, by });
  known = { search, composition, sheet, melt, list };
});
afterAll(() => site?.close());

/** Every page of pages.ts: addresses to look at, each with what tells that it is whole. */
const looked: Record<string, (of: typeof known) => Record<string, string>> = {
  '/': () => ({ '/': '.card' }),
  '/ask': () => ({ '/ask': '.card' }),
  '/searches': () => ({ '/searches': '.search-line' }),
  '/searches/:id': ({ search }) => ({
    [`/searches/${search}?max.density=7.8&has=Ti`]: '.candidate-card',
    [`/searches/${search}?view=scatter&brush=1,3,7.4,7.8`]: '.selected .candidate-card',
    [`/searches/${search}?view=distributions`]: '.histogram .bar',
    [`/searches/${search}?view=elements`]: '.figure .bar',
    [`/searches/${search}?view=systems`]: '.system-cards a',
    [`/searches/${search}?view=unexplored`]: '.system-cards a',
  }),
  '/searches/:id/candidates/:composition': ({ search, composition }) => ({
    [`/searches/${search}/candidates/${composition}`]: '.quantity',
  }),
  '/alloys': () => ({ '/alloys': '.alloy-entry' }),
  '/alloys/:composition': () => ({
    '/alloys/CoCrFeMnNi?replace=Co&with=Ni,Cu': '.substitutes',
    '/alloys/CoXx20': '[role="alert"]',
  }),
  '/compare': () => ({ '/compare?alloy=CoCrFeMnNi&alloy=CoCrFeNi&alloy=NbMoTaW': '.strip-mark' }),
  '/evidence': () => ({ '/evidence': '.reliability-dot' }),
  '/data/*?': () => ({
    '/data': '.data-overview code',
    '/data/elements': '.data-card',
    '/data/elements/Be': '.data-partners',
    '/data/pairs?show=matrix': '.pair-matrix td',
    '/data/prices': '.data-card',
    '/data/alloys': '.data-card',
    '/data/materials': 'h2',
    '/data/imports/new?kind=pairs': '#import-rows',
    '/data/versions': '.data-version',
  }),
  '/charge': () => ({ '/charge?alloy=CoCrFeMnNi': '.sheet' }),
  '/charge-sheets': () => ({ '/charge-sheets': '.sheet-line' }),
  '/charge-sheets/:number': ({ sheet }) => ({ [`/charge-sheets/${sheet}`]: '.sheet' }),
  '/melts': () => ({ '/melts': '.melt-line' }),
  '/melts/new': ({ sheet }) => ({ [`/melts/new?charge=${sheet}`]: '.melt-material' }),
  '/melts/:id': ({ melt }) => ({ [`/melts/${melt}`]: '.melt-facts' }),
  '/shortlists': () => ({ '/shortlists': '.short-lists li' }),
  '/shortlists/:id': ({ list }) => ({ [`/shortlists/${list}`]: 'dl.short-numbers' }),
};

test('every page of the site is looked at', () => {
  const source = readFileSync(join(import.meta.dirname, '../../services/web/src/pages/pages.ts'), 'utf8');
  const paths = [...source.matchAll(/\bpath: '([^']+)'/g)].map(([, path]) => path);
  expect(paths.length).toBeGreaterThan(0);
  expect(Object.keys(looked)).toEqual(paths);
});

/** A browser whose own setting makes text twice as large, which rem in media queries follow. */
async function withLargeText(page: Page): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  await browser.send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } });
}

// WCAG 2.2, 1.4.4 and 1.4.10: text at 200 %, nothing to be scrolled in two directions but tables and figures.
test.each(Object.keys(looked))('%s fits a phone with text at 200 %%', async (path) => {
  const { page, wrongs } = await site.visit('/crucible.svg', { viewport: { width: 390, height: 844 } });
  await withLargeText(page);
  for (const [address, whole] of Object.entries(looked[path]!(known))) {
    await page.goto(site.url + address);
    await page.locator(whole).first().waitFor();
    if (address === '/ask') {
      await page.getByRole('button', { name: 'As the demonstration' }).click();
      await page.locator('.sample-summary').waitFor();
    }
    await page.evaluate("document.querySelectorAll('main details').forEach((one) => { one.open = true; })");
    expect(await page.evaluate('getComputedStyle(document.documentElement).fontSize')).toBe('32px');
    expect(await page.evaluate('document.scrollingElement.scrollWidth'), address).toBe(390);
  }
  expect(wrongs).toEqual([]);
});
