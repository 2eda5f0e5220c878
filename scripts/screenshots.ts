/**
 * Pictures of every page and state at two widths, light and dark, and of what is printed as PDF, to be
 * looked at after a change of the pages. Usage: npx node scripts/screenshots.ts [WORD [FOLDER]], where WORD
 * picks the pictures whose name holds it ('' all) and FOLDER is where they go: test/browser/screenshots
 * (ignored by git) if none is named.
 */
import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { CandidatePage } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { openSite, type Site } from '../test/browser/site.ts';

const [word = '', named] = process.argv.slice(2);
const folder = named ? resolve(named) : join(import.meta.dirname, '../test/browser/screenshots');
const widths = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
];

interface Picture {
  name: string;
  path: string;
  /** what is there when the page is whole */
  shows: string;
  /** what is done before the picture is taken */
  before?: (page: Page) => Promise<void>;
  /** whether people take it to the workshop on paper */
  printed?: boolean;
}

const weighed = ['Co', 'Cr', 'Fe', 'Mn', 'Ni'].map((material) => ({ material, mass: 10 }));

/** From the charge sheet to the melt and what it says of the rules. */
async function workshopPictures(site: Site): Promise<Picture[]> {
  const sheet = { composition: 'CoCrFeMnNi', mass: 50, resolution: 0.001, loss: { Mn: 1.5 } };
  const { number } = await site.api<{ number: string }>('/charge-sheets', { ...sheet, name: 'First trial' });
  const { id } = await site.api<{ id: string }>('/melts', {
    ...{ name: 'First trial', date: '2026-11-25', charge: number, weighed, ingot: 49.8 },
    ...{ process: 'arc melting', anneal: { temperature: 1473, hours: 24, cooling: 'water quench' } },
    ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: 152, density: 7.94, notes: '' },
  });
  return [
    { name: 'charge-empty', path: '/charge', shows: '.charge-form' },
    { name: 'charge', path: '/charge?alloy=CoCrFeMnNi', shows: '.sheet' },
    {
      name: 'charge-wrong',
      path: '/charge?alloy=FeNb',
      shows: '.sheet',
      before: async (page) => {
        await page.getByLabel('as a metal, niobium').uncheck();
        await page.locator('.note-danger').waitFor();
      },
    },
    { name: 'charge-sheets', path: '/charge-sheets', shows: '.sheet-line' },
    { name: 'charge-sheet', path: `/charge-sheets/${number}`, shows: '.sheet', printed: true },
    { name: 'melts', path: '/melts', shows: '.melt-line' },
    { name: 'melt-new', path: `/melts/new?charge=${number}`, shows: '.melt-material' },
    { name: 'melt', path: `/melts/${id}`, shows: '.melt-facts', printed: true },
  ];
}

/** The tables of the data, and what somebody brought in. */
async function dataPictures(site: Site): Promise<Picture[]> {
  const bringIn = async (kind: string, csv: string) => {
    const headers = { 'content-type': 'text/csv', 'idempotency-key': `picture-of-${kind}` };
    const address = `${site.url}/api/v1/imports?kind=${kind}&name=Invented%20${kind}`;
    const answer = await fetch(address, { method: 'POST', body: csv, headers });
    return ((await answer.json()) as { number: number }).number;
  };
  const pairs = 'a,b,mixingEnthalpy,source\nAl,Ni,-33.5,invented\nCu,W,31,invented\n';
  const number = await bringIn('pairs', pairs);
  await bringIn(
    'materials',
    'material,contains,amounts,purity,price,currency,melting\nMn flakes,,,99.7,3.40,EUR,\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\n',
  );
  await bringIn(
    'alloys',
    'composition,name,phases,process,doi,note\nAl20Co20Cr20Fe20Ni20,invented trial,BCC+B2,cast,,\n',
  );
  const rows = '.data-table tbody a, .data-card';
  return [
    { name: 'data', path: '/data', shows: '.data-overview code' },
    { name: 'data-elements', path: '/data/elements', shows: rows },
    { name: 'data-element', path: '/data/elements/Be', shows: '.data-partners' },
    { name: 'data-pairs', path: '/data/pairs?show=matrix&at=Al-Ni', shows: '.pair-matrix td' },
    { name: 'data-pairs-list', path: '/data/pairs?show=list&element=Al', shows: rows },
    { name: 'data-prices', path: '/data/prices', shows: rows },
    { name: 'data-alloys', path: '/data/alloys?has=Al', shows: rows },
    { name: 'data-materials', path: '/data/materials', shows: '.data-materials' },
    { name: 'data-imports', path: '/data/imports', shows: '.import-line' },
    { name: 'data-import', path: `/data/imports/${number}`, shows: '.import-rows' },
    {
      name: 'data-import-new',
      path: '/data/imports/new?kind=pairs',
      shows: '#import-rows',
      before: async (page) => {
        await page.getByLabel('Rows as CSV').fill(`${pairs}Fe,Fe,1,invented\nFe,W,0,invented\n`);
        await page.locator('.fate-row').nth(3).waitFor();
      },
    },
    { name: 'data-versions', path: '/data/versions', shows: '.data-version' },
  ];
}

/** What a laboratory agrees on, with what people wrote. */
async function shortlistPictures(site: Site, search: string): Promise<Picture[]> {
  const by = 'First shift';
  const { id } = await site.api<{ id: string }>('/shortlists', { name: 'To be melted in December', by });
  await site.api(`/shortlists/${id}/pick`, { search, count: 3, onePerSystem: true, by });
  const list = await site.api<{ sequence: number; entries: { entry: string }[] }>(`/shortlists/${id}`);
  const [first] = list.entries;
  const acts = [
    { kind: 'note', entry: first!.entry, text: 'Arc-melts well; cracked at the second turn.' },
    { kind: 'status', entry: first!.entry, status: 'to melt' },
  ];
  const changes = acts.map((act, at) => ({ key: String(at), by, seen: list.sequence, act }));
  await fetch(`${site.url}/api/v1/shortlists/${id}`, {
    method: 'PATCH',
    body: JSON.stringify({ changes }),
    headers: { 'content-type': 'application/json' },
  });
  return [
    { name: 'shortlists', path: '/shortlists', shows: '.short-lists li' },
    { name: 'shortlist', path: `/shortlists/${id}`, shows: 'dl.short-numbers', printed: true },
  ];
}

/** Melts enough for a recalibrated estimate: taken last, for they stand on other pages too. */
async function manyMelts(site: Site): Promise<Picture[]> {
  const systems = ['Co Cr Fe Ni', 'Co Cr Fe Mn Ni', 'Al Co Cr Fe Ni', 'Co Cr Cu Fe Ni', 'Al Co Cr Cu Fe Ni'];
  for (const system of systems) {
    for (const at of [0, 1, 2, 3, 4]) {
      await site.api('/melts', {
        ...{
          name: `${system}, ${at + 1}`,
          date: '2026-11-26',
          charge: null,
          ingot: null,
          process: 'arc melting',
        },
        weighed: system.split(' ').map((material, place) => ({ material, mass: place === 0 ? 6 + at : 10 })),
        ...{ anneal: null, phases: at < 3 ? ['FCC'] : ['FCC', 'B2'], methods: ['X-ray diffraction'] },
        ...{ hardness: null, density: null, notes: '' },
      });
    }
  }
  return [
    { name: 'evidence-own', path: '/evidence', shows: '.own-estimate' },
    { name: 'alloy-own', path: '/alloys/AlCoCrFeNi', shows: '.own-phase .record-list' },
    { name: 'melts-many', path: '/melts', shows: '.melt-line' },
  ];
}

/** Searches in every state, and the pictures that show them. */
async function pictures(site: Site): Promise<Picture[]> {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const done = await site.finish(specification);
  const impossible = [
    { quantity: 'density', max: 6.5 },
    { quantity: 'valenceElectronConcentration', min: 8.2 },
  ];
  const nothing = await site.finish({ ...specification, name: 'Too much asked', limits: impossible });
  const fine = {
    ...specification,
    name: 'The same on a finer grid',
    fractions: { step: 0.5, min: 2, max: 40 },
  };
  const running = await site.api<{ id: string }>('/searches', fine);
  const { items } = await site.api<CandidatePage>(`/searches/${done.id}/candidates?limit=1`);
  const composition = Object.entries(items[0]!.composition).flat().join('');
  const demonstration = async (page: Page) => {
    await page.getByRole('button', { name: 'As the demonstration' }).click();
    await page.locator('.size-numbers').waitFor();
    await page.locator('.sample-summary').waitFor();
  };
  return [
    { name: 'ask-empty', path: '/ask', shows: '.card' },
    { name: 'ask', path: '/ask', shows: '.card', before: demonstration },
    {
      name: 'ask-wrong',
      path: '/ask',
      shows: '.card',
      before: async (page) => {
        await demonstration(page);
        await page.getByLabel('Chromium at most, at.%').fill('10');
        await page.getByLabel('The best of all').fill('many');
        await page.locator('#field-limits-3').getByLabel('at least', { exact: true }).fill('9.5');
        await page.getByRole('button', { name: 'Rank by an expression' }).click();
        await page.getByLabel('Formula of merit').fill('youngsModulus / densty');
        await page.locator('.own-place').waitFor();
        await page.locator('.size-wrong li').nth(2).waitFor();
      },
    },
    {
      name: 'ask-all',
      path: '/ask',
      shows: '.card',
      before: async (page) => {
        await page.getByRole('button', { name: 'Light', exact: true }).click();
        await page.locator('.sample-summary').waitFor();
        await page.getByRole('button', { name: 'Combine with another quantity' }).click();
        await page.evaluate(
          "document.querySelectorAll('main details').forEach((one) => { one.open = true; })",
        );
        await page.getByRole('button', { name: 'Weigh two aims' }).click();
        await page.getByRole('button', { name: 'Add a limit on the kept ones' }).click();
        await page.locator('.worth-curve').nth(1).waitFor();
        await page.getByText('Unit: ').waitFor();
        await page.locator('.size-numbers').waitFor();
      },
    },
    {
      name: 'ask-when',
      path: '/ask',
      shows: '.card',
      before: async (page) => {
        await demonstration(page);
        await page.getByText('Worked on at any time').click();
        await page.getByLabel('Only between two times of day').check();
      },
    },
    { name: 'searches', path: '/searches', shows: '.search-line' },
    { name: 'search-running', path: `/searches/${running.id}`, shows: '.limit-table' },
    { name: 'search-done', path: `/searches/${done.id}`, shows: '.candidates tbody a, .candidate-card' },
    {
      name: 'search-filtered',
      path: `/searches/${done.id}?max.density=7.7&has=Ti&order=density`,
      shows: '.candidates tbody a, .candidate-card',
    },
    { name: 'search-scatter', path: `/searches/${done.id}?view=scatter`, shows: '.scatter svg .axis' },
    {
      name: 'search-scatter-selected',
      path: `/searches/${done.id}?view=scatter&x=density&y=omega&colour=cost&brush=7.4,7.7,2,4`,
      shows: '.selected .candidates tbody a, .selected .candidate-card',
    },
    {
      name: 'search-distributions',
      path: `/searches/${done.id}?view=distributions`,
      shows: '.histogram .bar',
    },
    { name: 'search-elements', path: `/searches/${done.id}?view=elements`, shows: '.figure .bar' },
    {
      name: 'search-systems',
      path: `/searches/${done.id}?view=systems`,
      shows: '.systems tbody a, .system-cards a',
    },
    {
      name: 'search-unexplored',
      path: `/searches/${done.id}?view=unexplored`,
      shows: '.systems tbody a, .system-cards a',
    },
    { name: 'search-nothing', path: `/searches/${nothing.id}`, shows: '.limit-table' },
    {
      name: 'candidate',
      path: `/searches/${done.id}/candidates/${composition}`,
      shows: '.quantity',
      printed: true,
    },
    { name: 'alloy', path: '/alloys/CoCrFeMnNi', shows: '.verdict-line', printed: true },
    { name: 'alloy-unknown', path: '/alloys/Li50Sc50', shows: '.verdict-line' },
    { name: 'alloy-replace', path: '/alloys/CoCrFeMnNi?replace=Co', shows: '.substitutes' },
    { name: 'alloy-unreadable', path: '/alloys/CoXx20', shows: '[role="alert"]' },
    { name: 'alloys', path: '/alloys', shows: '.alloy-entry' },
    {
      name: 'compare',
      path: '/compare?alloy=CoCrFeMnNi&alloy=CoCrCuFeNi&alloy=NbMoTaW',
      shows: '.strip-mark',
      printed: true,
    },
    { name: 'compare-empty', path: '/compare', shows: '.alloy-entry' },
    { name: 'evidence', path: '/evidence', shows: '.reliability-dot' },
    ...(await shortlistPictures(site, done.id)),
    { name: 'no-such-search', path: '/searches/gone', shows: '[role="alert"]' },
    {
      name: 'no-answer',
      path: '/searches',
      shows: '.search-line',
      before: async (page) => {
        await page.route('**/api/**', (route) => route.abort());
        await page.locator('.banners .note-danger').waitFor();
      },
    },
  ];
}

async function take(site: Site, { name, path, shows, before, printed }: Picture): Promise<void> {
  for (const viewport of widths) {
    for (const colorScheme of ['light', 'dark'] as const) {
      const narrow = viewport.width < 500;
      const { page } = await site.visit(path, { viewport, colorScheme, isMobile: narrow, hasTouch: narrow });
      await page.locator(shows).first().waitFor();
      await before?.(page);
      const file = `${name}-${viewport.width}-${colorScheme}.png`;
      await page.screenshot({ path: join(folder, file), fullPage: true });
      // On paper it is the same, whatever the screen shows.
      if (printed && !narrow && colorScheme === 'dark') await page.pdf({ path: join(folder, `${name}.pdf`) });
      await page.context().close();
    }
  }
}

const site = await openSite();
try {
  await mkdir(folder, { recursive: true });
  for (const make of [pictures, workshopPictures, dataPictures, manyMelts]) {
    for (const picture of await make(site)) if (picture.name.includes(word)) await take(site, picture);
  }
  console.log(folder);
} finally {
  await site.close();
}
