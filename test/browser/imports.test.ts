import type { PriceList } from '@tiegel/elements';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { enterOn, tabTo, typeInto } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const head = 'symbol,pricePerKilogram,currency,date,source';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

interface Version {
  number: number;
  inForce: boolean;
  searches: number;
}

/** Stores rows as the page does. */
async function stored(kind: string, csv: string): Promise<Version> {
  const answer = await fetch(`${site.url}/api/v1/imports?kind=${kind}`, {
    method: 'POST',
    body: csv,
    headers: {
      'content-type': 'text/csv',
      'idempotency-key': `${kind} ${csv}`.replace(/\W/g, '').slice(0, 60),
    },
  });
  expect(answer.status).toBe(201);
  return (await answer.json()) as Version;
}

const withdraw = ({ number }: Version) =>
  fetch(`${site.url}/api/v1/imports/${number}`, { method: 'DELETE' }).then(({ status }) =>
    expect(status).toBe(204),
  );

async function write(page: Page, rows: string): Promise<void> {
  await page.getByLabel('Rows as CSV').fill(rows);
}

test('prices are brought in by keyboard: every row tells what becomes of it, a bad one stops all, a withdrawn list comes back', async () => {
  const { page, wrongs } = await site.visit('/data/imports');
  await page.getByText('Nothing of your own is stored here yet.').waitFor();
  await enterOn(page, /^Bring in data$/);
  await page.getByRole('heading', { name: 'Bring in your own data' }).waitFor();
  const rows = [head, 'Fe,1.25,EUR,2026-11-25,invented offer', 'Xx,2,EUR,2026-11-25,invented offer'].join(
    '\n',
  );
  await typeInto(page, /^Rows as CSV$/, rows);
  const refused = page.locator('.fate-row.fate-refused');
  await eventually(() => textOf(refused)).toMatch(/line 3.*refused.*Xx/s);
  await page.getByText('All rows are stored or none').waitFor();
  expect((await site.api<{ items: Version[] }>('/imports')).items).toEqual([]);

  await page.reload();
  await eventually(() => page.getByLabel('Rows as CSV').inputValue()).toBe(rows);
  await typeInto(page, /^Rows as CSV$/, rows.replace('Xx', 'Ni'));
  await eventually(() => refused.count()).toBe(0);
  const iron = page.locator('.fate-row').first();
  // Against the demonstration list, which has a price of iron.
  expect(await textOf(iron)).toMatch(/changed.*before:/s);
  // The list that comes with the program has a price of each of the 56 elements.
  await page.getByText('54 values are in force now and would not be any more').waitFor();
  await typeInto(page, /^Name of this import$/, 'Offer of spring');
  await enterOn(page, /^Store 2 rows$/);
  await page.waitForURL(/\/data\/imports\/\d+$/);
  await page.getByRole('heading', { name: /Offer of spring/ }).waitFor();
  await page.getByText('● in force').waitFor();
  const list = await site.api<PriceList>('/prices');
  expect(list.prices.Fe?.pricePerKilogram).toBe(1.25);
  expect(list.invented).toBe(false);

  await page.goto(`${site.url}/data/prices`);
  await page.getByText('Your list: EUR per kg').waitFor();
  await page.goto(`${site.url}/data/imports`);
  await enterOn(page, /^Withdraw: /);
  await page.getByText('○ withdrawn').waitFor();
  expect((await site.api<PriceList>('/prices')).invented).toBe(true);
  await enterOn(page, /^Bring back: /);
  await page.getByText('● in force').waitFor();
  expect((await site.api<PriceList>('/prices')).prices.Ni?.pricePerKilogram).toBe(2);
  await enterOn(page, /^Withdraw: /);
  await page.getByText('○ withdrawn').waitFor();
  expect(wrongs).toEqual([]);
});

test('a value of a pair takes the place of the table’s, marked as yours', async () => {
  const version = await stored('pairs', 'a,b,mixingEnthalpy,source\nAl,Ni,-33.5,invented measurement\n');
  const { page, wrongs } = await site.visit('/data/pairs?element=Al,Ni,Ti&at=Ni-Al');
  await eventually(() => textOf(page.locator('.matrix-readout'))).toMatch(
    new RegExp(`Ni–Al.*−33\\.5 kJ/mol.*your import ${version.number}`),
  );
  await eventually(() => textOf(page.locator('.pair-matrix td[tabindex="0"]'))).toBe('−33.5*');
  // Cautions while a charge is typed, and the page of an alloy, name it too.
  const origin = new RegExp(`Al–Ni −33\\.5 .*own value of \\d{4}-\\d\\d-\\d\\d, import ${version.number}`);
  const charge = await site.visit('/charge?alloy=Al50Ni50');
  await charge.page.locator('.sheet').waitFor();
  expect(await textOf(charge.page.locator('.sheet-cautions'))).toMatch(origin);
  const alloy = await site.visit('/alloys/Al50Ni50');
  await eventually(() => textOf(alloy.page.locator('.competes ~ .own-pairs'))).toMatch(origin);
  expect([...charge.wrongs, ...alloy.wrongs]).toEqual([]);
  await withdraw(version);
  await page.reload();
  // Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817: Al-Ni -22 kJ/mol (typed from memory: weak evidence).
  await eventually(() => textOf(page.locator('.pair-matrix td[tabindex="0"]'))).toBe('−22');
  expect(wrongs).toEqual([]);
});

test('alloys of one’s own stand among the published ones, are found, and lead to their page', async () => {
  const before = await site.api<{ total: number }>('/published-alloys?limit=1');
  const version = await stored(
    'alloys',
    'composition,name,phases,process,doi,note\nHf25Mo25Ta25W25,invented trial,BCC,arc melted,,invented\n',
  );
  const { page, wrongs } = await site.visit('/data/alloys');
  await page.getByText(`${(before.total + 1).toLocaleString('en-US')} alloys.`).waitFor();
  await typeInto(page, /^With$/, 'hf ta');
  await typeInto(page, /^Without$/, 'nb ti zr');
  const rows = page.locator('.data-table tbody tr[data-index]');
  await eventually(() => rows.filter({ hasText: 'invented trial' }).count()).toBe(1);
  expect(await textOf(rows.filter({ hasText: 'invented trial' }))).toMatch(/● yours.*BCC/s);
  await page.getByLabel('From').selectOption('yes');
  await eventually(() => rows.count()).toBe(1);
  await page.waitForURL(/has=hf(\+|%20)ta/);
  await tabTo(page, /^Hf25 Mo25 Ta25 W25$/);
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/alloys\/Hf25Mo25Ta25W25$/);
  await page.locator('.nearest-table').getByRole('link', { name: '● yours' }).waitFor();
  await withdraw(version);
  await page.goto(`${site.url}/data/alloys?own=yes`);
  await page.getByText('No alloy here meets all of this.').waitFor();
  await page.getByRole('button', { name: 'Show all alloys' }).click();
  await page.getByText(`${before.total.toLocaleString('en-US')} alloys.`).waitFor();
  expect(wrongs).toEqual([]);
});

test('published alloys carry their doi, and only those in sight are drawn', async () => {
  const { total } = await site.api<{ total: number }>('/published-alloys?limit=1');
  const { page, wrongs } = await site.visit('/data/alloys');
  const table = page.locator('.data-table');
  await eventually(() => table.getAttribute('aria-rowcount')).toBe(String(total + 1));
  const rows = table.locator('tbody tr[data-index]');
  expect(await rows.count()).toBeLessThan(80);
  expect(await rows.first().locator('a[href^="https://doi.org/10."]').count()).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'Phases', exact: true }).click();
  await page.waitForURL(/order=phases$/);
  const phases = () => textOf(rows.first().locator('td').nth(2));
  await eventually(phases).toMatch(/^B/);
  await page.getByRole('button', { name: 'Phases', exact: true }).click();
  await page.waitForURL(/direction=desc/);
  await eventually(phases).not.toMatch(/^B/);
  await rows.first().locator('th a').focus();
  await eventually(async () => {
    await page.keyboard.press('End');
    return table.locator(`tr[aria-rowindex="${total + 1}"]`).count();
  }).toBe(1);
  await page.getByLabel('Search').fill('no such alloy anywhere');
  await page.getByText('No alloy here meets all of this.').waitFor();
  expect(wrongs).toEqual([]);
});

test('raw materials that were brought in are listed with purity, price and contents', async () => {
  const version = await stored(
    'materials',
    'material,contains,amounts,purity,price,currency,melting\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\n',
  );
  const { page, wrongs } = await site.visit('/data/materials');
  await page.getByText('The prices of the pure elements are invented').waitFor();
  const row = page.locator('.data-materials tbody tr', { hasText: 'FeNb66' });
  await eventually(() => textOf(row)).toMatch(/Fe34 Nb66.*98\.50.*40\.00 EUR.*1853/s);
  await page.goto(`${site.url}/charge?alloy=FeNb`);
  await page.getByText('Use a list of materials').click();
  await page.getByRole('button', { name: 'Take the one of the data' }).click();
  await eventually(() => page.getByLabel('Name on the shelf').inputValue()).toBe('FeNb66');
  await page.goBack();
  await row.getByRole('link', { name: `your import ${version.number}` }).click();
  await page.getByText('FeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853').waitFor();
  expect(wrongs).toEqual([]);
});

test('a column of element values stands in the table of elements as yours', async () => {
  await stored('column', 'symbol,value,name,unit,mixing\nFe,52.5,invented scale,HV,mole\nNi,64,,,\n');
  const { page, wrongs } = await site.visit('/data/elements?text=Fe');
  await page.getByRole('columnheader', { name: /invented scale \(yours\)/ }).waitFor();
  await page.goto(`${site.url}/data/elements/Fe`);
  await eventually(() => textOf(page.locator('tr', { hasText: 'invented scale' }))).toMatch(/52\.5HV.*yours/);
  expect(wrongs).toEqual([]);
});

test('a version tells which searches used it', async () => {
  const elements = await site.api<{ symbol: string }[]>('/elements');
  const rows = elements.map(({ symbol }) => `${symbol},3,EUR,2026-11-26,invented`);
  const version = await stored('prices', `${[head, ...rows].join('\n')}\n`);
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const { id, dataVersion } = await site.finish({ ...specification, name: 'With our prices' });
  const { page, wrongs } = await site.visit('/data/versions');
  const article = page.locator('.data-version', { hasText: dataVersion });
  await eventually(() => textOf(article)).toMatch(/in force now.*price list.*With our prices/s);
  await article.getByRole('link', { name: 'With our prices' }).click();
  await page.waitForURL(new RegExp(`/searches/${id}$`));
  await page.goto(`${site.url}/data/imports/${version.number}`);
  await page.getByText('1 search used it.').waitFor();
  expect(wrongs).toEqual([]);
});

test('a file is chosen or dropped; one that is no UTF-8 is refused with what to do', async () => {
  const { page, wrongs } = await site.visit('/data/imports/new?kind=prices');
  const rows = `${head}\nFe,1.5,EUR,2026-11-27,invented\n`;
  const file = (name: string, text: Buffer) => ({ name, mimeType: 'text/csv', buffer: text });
  await page.getByLabel('File', { exact: true }).setInputFiles(file('latin.csv', Buffer.from([0xfc, 0x2c])));
  await page.getByText('Save a spreadsheet as “CSV UTF-8”').waitFor();
  await page.getByLabel('File', { exact: true }).setInputFiles(file('November.csv', Buffer.from(rows)));
  await eventually(() => page.getByLabel('Rows as CSV').inputValue()).toBe(rows);
  expect(await page.getByLabel('Name of this import').inputValue()).toBe('November');
  await page.getByRole('button', { name: 'Empty the field' }).click();
  const dropped = await page.evaluateHandle(
    `(() => { const moved = new DataTransfer(); moved.items.add(new File([${JSON.stringify(rows)}], 'dropped.csv')); return moved; })()`,
  );
  await page.dispatchEvent('.import-text', 'drop', { dataTransfer: dropped });
  await eventually(() => page.getByLabel('Rows as CSV').inputValue()).toBe(rows);
  expect(wrongs).toEqual([]);
});

test('an import is downloaded as it was stored, and begins another', async () => {
  const version = await stored('pairs', 'a,b,mixingEnthalpy,source\nCo,W,-1.25,invented\n');
  const { page, wrongs } = await site.visit(`/data/imports/${version.number}`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Download as CSV' }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  expect(Buffer.concat(chunks).toString()).toContain('Co,W,-1.25,invented');
  await page.getByRole('button', { name: 'Begin another from these rows' }).click();
  await eventually(() => page.getByLabel('Rows as CSV').inputValue()).toContain('Co,W,-1.25,invented');
  await eventually(() => textOf(page.locator('.fate-row').first())).toContain('the same');
  expect(wrongs).toEqual([]);
});

describe('where something does not answer', () => {
  test('rows whose answer was lost are stored once, not twice', async () => {
    const { page } = await site.visit('/data/imports/new?kind=pairs');
    await write(page, 'a,b,mixingEnthalpy,source\nCu,W,30.25,sent twice\n');
    let lost = 0;
    await page.route('**/api/v1/imports?*', async (route) => {
      if (route.request().method() !== 'POST' || lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      return route.abort();
    });
    await page.getByRole('button', { name: 'Store 1 row' }).click();
    await page.getByText('Whether the rows were stored is not known; what you entered is kept.').waitFor();
    await page.reload();
    const count = async () => (await site.api<{ items: Version[] }>('/imports?kind=pairs')).items.length;
    const after = await count();
    await page.getByRole('button', { name: 'Store 1 row' }).click();
    await page.waitForURL(/\/data\/imports\/\d+$/);
    expect(await count()).toBe(after);
  });

  test.each([
    ['/data/imports', '**/api/v1/imports', 'The list of imports cannot be shown.'],
    ['/data/alloys', '**/api/v1/published-alloys*', 'The published alloys cannot be shown.'],
    ['/data/materials', '**/api/v1/materials', 'The raw materials cannot be shown.'],
    ['/data/versions', '**/api/v1/data-versions', 'The versions cannot be shown.'],
  ])('%s says so, and is there when the server answers again', async (path, route, words) => {
    const { page } = await site.visit('/nowhere');
    await page.route(route, (one) => one.abort());
    await page.goto(site.url + path);
    await page.getByText(words).waitFor();
    await page.unroute(route);
    await page.getByRole('button', { name: 'Ask again' }).click();
    await eventually(() => page.getByText(words).count()).toBe(0);
  });

  test('an import that is not there says so', async () => {
    const { page } = await site.visit('/data/imports/99999');
    await page.getByText('Import 99999 cannot be shown.').waitFor();
  });
});

test('rows are brought in on a phone, and nothing is wider than the screen', async () => {
  const { page, wrongs } = await site.visit('/data/imports/new?kind=pairs', phone);
  const fits = () => page.evaluate('document.documentElement.scrollWidth <= 390');
  await write(page, `a,b,mixingEnthalpy,source\nFe,Fe,1,${'a long source '.repeat(12)}\nFe,W,1.5,invented\n`);
  await page.locator('.fate-row.fate-refused').waitFor();
  expect(await fits()).toBe(true);
  await write(page, 'a,b,mixingEnthalpy,source\nFe,W,1.5,invented\n');
  await page.getByRole('button', { name: 'Store 1 row' }).tap();
  await page.waitForURL(/\/data\/imports\/\d+$/);
  await page.getByText('● in force').waitFor();
  expect(await fits()).toBe(true);
  for (const path of ['/data/imports', '/data/alloys', '/data/materials', '/data/versions']) {
    await page.goto(site.url + path);
    await page.locator('.import-line, .data-card, .data-materials, .data-version').first().waitFor();
    expect(await fits()).toBe(true);
  }
  expect(wrongs).toEqual([]);
});
