import type { Shortlist, ShortlistAct } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { axeOf, turnNarrowAndDark, wideAndLight } from './axeOf.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let id: string;

beforeAll(async () => {
  site = await openSite();
  const { id: made } = await site.api<Shortlist>('/shortlists', { name: 'Cold impeller', by: 'Ana' });
  id = made;
});
afterAll(() => site?.close());

async function as(name: string): Promise<{ page: Page; wrongs: string[] }> {
  const visit = await site.visit(`/shortlists/${id}`);
  await visit.page.getByLabel('Your name').fill(name);
  return visit;
}
const alloyField = (page: Page) => page.getByLabel('An alloy, at.%');
const entry = (page: Page, symbol: string) => page.locator('.short-entry', { hasText: symbol }).first();

test('a list is begun by keyboard, filled, noted on and judged', async () => {
  const { page, wrongs } = await site.visit('/shortlists');
  await page.getByLabel('Your name').focus();
  await page.keyboard.type('Ana');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Hot blades');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Hot blades' }).waitFor();
  await alloyField(page).focus();
  await page.keyboard.type('NbMoTaW');
  await page.keyboard.press('Enter');
  await entry(page, 'Nb').waitFor();
  await entry(page, 'Nb').getByLabel('Note').focus();
  await page.keyboard.type('Brittle when cold.');
  await page.keyboard.press('Enter');
  await page.getByText('Brittle when cold.').waitFor();
  await entry(page, 'Nb').getByLabel('How far').selectOption('agreed');
  await eventually(async () => {
    const [list] = (await site.api<{ items: Shortlist[] }>('/shortlists')).items;
    return list!.entries.map(({ status, notes }) => [status.value, notes[0]?.text]);
  }).toEqual([['agreed', 'Brittle when cold.']]);
  // On paper: what was agreed and the numbers, nothing to press, and where it comes from.
  await page.locator('dl.short-numbers').waitFor();
  await page.getByText('Data version in force now').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('button:visible, .button:visible, input:visible').count()).toBe(0);
  expect(await entry(page, 'Nb').getByLabel('How far').isVisible()).toBe(true);
  expect(await page.getByText(`from ${page.url()}`).isVisible()).toBe(true);
  expect(wrongs).toEqual([]);
});

test('two people, one without a connection for a while: nothing is lost, and what they contradict shows', async () => {
  const ana = await as('Ana');
  await alloyField(ana.page).fill('CoCrFeMnNi');
  await alloyField(ana.page).press('Enter');
  const ben = await as('Ben');
  await entry(ben.page, 'Mn').waitFor();
  await ben.page.context().setOffline(true);
  await entry(ben.page, 'Mn').getByLabel('Note').fill('Ask the foundry.');
  await entry(ben.page, 'Mn').getByLabel('Note').press('Enter');
  await entry(ben.page, 'Mn').getByLabel('How far').selectOption('set aside');
  await alloyField(ben.page).fill('NbMoTaW');
  await alloyField(ben.page).press('Enter');
  await ben.page.getByText(/changes are kept in this browser/).waitFor();
  await entry(ana.page, 'Mn').getByLabel('How far').selectOption('to melt');
  await entry(ana.page, 'Mn').getByLabel('Note').fill('Fits the furnace.');
  await entry(ana.page, 'Mn').getByLabel('Note').press('Enter');
  await eventually(async () => (await site.api<Shortlist>(`/shortlists/${id}`)).sequence).toBe(4);
  await ben.page.context().setOffline(false);
  for (const { page } of [ana, ben]) {
    await page.getByText('Two said different things at the same time.').waitFor({ timeout: 30_000 });
    await page.getByText('Ask the foundry.').waitFor();
    await page.getByText('Fits the furnace.').waitFor();
    await entry(page, 'Nb').waitFor();
  }
  await ana.page.getByRole('button', { name: /Take “to melt”/ }).click();
  await eventually(() => ben.page.getByText('Two said different').count()).toBe(0);
  const { entries } = await site.api<Shortlist>(`/shortlists/${id}`);
  expect(entries[0]!.status).toMatchObject({ value: 'to melt', rivals: [] });
});

test('three who said three things at once stand in one line, with a button for each of these', async () => {
  const { id: list, sequence } = await site.api<Shortlist>('/shortlists', { name: 'Contested', by: 'Ana' });
  const change = (by: string, act: ShortlistAct) =>
    fetch(`${site.url}/api/v1/shortlists/${list}`, {
      method: 'PATCH',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ changes: [{ key: crypto.randomUUID(), by, seen: sequence + 1, act }] }),
    });
  await change('Ana', { kind: 'add', entry: 'CoNi' });
  for (const [by, status] of [
    ['Ana', 'agreed'],
    ['Ben', 'to melt'],
    ['Cy', 'set aside'],
  ] as const)
    await change(by, { kind: 'status', entry: 'CoNi', status });
  const { page } = await site.visit(`/shortlists/${list}`);
  await page.getByLabel('Your name').fill('Di');
  const conflict = page.getByRole('status').filter({ hasText: 'said different things' });
  await conflict.waitFor();
  expect(await textOf(conflict.locator('p').first())).toBe(
    'Several said different things at the same time. Cy: set aside; Ana: agreed; Ben: to melt.',
  );
  expect(await conflict.getByRole('button').allTextContents()).toEqual([
    'Keep “set aside”',
    'Take “agreed”',
    'Take “to melt”',
  ]);
  await conflict.getByRole('button', { name: 'Take “to melt”' }).click();
  await eventually(() => conflict.count()).toBe(0);
});

test('an alloy that one took off while another wrote on it is kept, and nothing is open', async () => {
  const { id: list, sequence } = await site.api<Shortlist>('/shortlists', { name: 'Kept', by: 'Ana' });
  const change = (by: string, seen: number, act: ShortlistAct) =>
    fetch(`${site.url}/api/v1/shortlists/${list}`, {
      method: 'PATCH',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ changes: [{ key: crypto.randomUUID(), by, seen, act }] }),
    });
  await change('Ana', sequence, { kind: 'add', entry: 'CoNi' });
  await change('Ben', sequence + 1, { kind: 'note', entry: 'CoNi', text: 'Promising.' });
  await change('Ana', sequence + 1, { kind: 'remove', entry: 'CoNi' });
  const { page } = await site.visit(`/shortlists/${list}`);
  await page.getByLabel('Your name').fill('Cy');
  await page.getByText('Ana took this alloy off the list').waitFor();
  await page.getByRole('button', { name: 'Keep it on the list' }).click();
  await eventually(() => page.getByText('Ana took this alloy off the list').count()).toBe(0);
  await eventually(
    async () => (await site.api<Shortlist>(`/shortlists/${list}`)).entries[0]!.removed,
  ).toMatchObject({ value: false, by: 'Cy', rivals: [] });
});

test('what was not sent survives a reload, and what was typed', async () => {
  const { page } = await as('Cy');
  await entry(page, 'Mn').waitFor();
  await entry(page, 'Mn').getByLabel('Note').fill('Half a thou');
  await page.reload();
  expect(await entry(page, 'Mn').getByLabel('Note').inputValue()).toBe('Half a thou');
});

test('what is half typed on one list stays off another with the same alloy', async () => {
  const other = await site.api<Shortlist>('/shortlists', { name: 'Warm impeller', by: 'Ana' });
  const lists = [`/shortlists/${id}`, `/shortlists/${other.id}`];
  const { page } = await as('Dee');
  for (const list of lists) {
    await page.goto(site.url + list);
    await alloyField(page).fill('CoNi');
    await alloyField(page).press('Enter');
    await entry(page, 'Co').waitFor();
    await page.getByText('Everything is sent.').waitFor();
  }
  await entry(page, 'Co').getByLabel('Note').fill('For warm parts al');
  await alloyField(page).fill('CoCrF');
  await page.goto(site.url + lists[0]);
  expect(await entry(page, 'Co').getByLabel('Note').inputValue()).toBe('');
  expect(await alloyField(page).inputValue()).toBe('');
  await page.goto(site.url + lists[1]);
  expect(await entry(page, 'Co').getByLabel('Note').inputValue()).toBe('For warm parts al');
  expect(await alloyField(page).inputValue()).toBe('CoCrF');
});

test('what the server cannot take for a while is kept, with the reason, and sent when it can', async () => {
  const { page } = await as('Ana');
  await page.route('**/shortlists/*', (route) =>
    route.request().method() === 'PATCH'
      ? route.fulfill({
          status: 503,
          contentType: 'application/problem+json',
          body: JSON.stringify({ code: 'store/busy', detail: 'The database is locked.', faults: [] }),
        })
      : route.continue(),
  );
  await alloyField(page).fill('CrV');
  await alloyField(page).press('Enter');
  await page.getByText('1 change is kept in this browser and not sent yet').waitFor();
  await page.getByText('It cannot now: The database is locked.').waitFor();
  await entry(page, 'V').waitFor();
  await page.unroute('**/shortlists/*');
  await eventually(async () =>
    (await site.api<Shortlist>(`/shortlists/${id}`)).entries.map((one) => one.entry),
  ).toContain('Cr50V50');
});

test('a change that the server refuses takes no other with it', async () => {
  const { page } = await as('Ana');
  await page.route('**/shortlists/*', (route) =>
    route.request().method() === 'PATCH' ? route.abort() : route.continue(),
  );
  await alloyField(page).fill('CuNiSi');
  await alloyField(page).press('Enter');
  await page.getByText('1 change is kept').waitFor();
  // Longer than the server takes: another tab of an earlier release may have kept it.
  await page.evaluate("localStorage.setItem('tiegel.person.1', 'Ana'.repeat(21))");
  await page.reload();
  await alloyField(page).fill('AlNiTi');
  await alloyField(page).press('Enter');
  await page.getByText('2 changes are kept').waitFor();
  await page.unroute('**/shortlists/*');
  await page.getByText('A change was refused:').waitFor();
  await page.getByText('Everything is sent.').waitFor({ state: 'attached' });
  const { entries } = await site.api<Shortlist>(`/shortlists/${id}`);
  expect(entries.filter(({ entry: text }) => text.includes('Cu') && text.includes('Si'))).toHaveLength(1);
  expect(entries.filter(({ entry: text }) => text.includes('Ti'))).toHaveLength(0);
});

test('what stands on a list is compared, without what was set aside; too many are told how many', async () => {
  const { id: long } = await site.api<Shortlist>('/shortlists', { name: 'Long', by: 'Ana' });
  const alloys = ['CoNi', 'CoFe', 'CrFe', 'CrNi', 'FeNi', 'FeMn', 'MnNi'];
  const { page } = await site.visit(`/shortlists/${long}`);
  // Whatever cannot be changed before a name is given does not look as if it could.
  const paper = (field: string) =>
    page.evaluate<string>(`getComputedStyle(document.querySelector('${field}')).backgroundColor`);
  await alloyField(page).waitFor();
  expect(await paper('.short-page form input')).not.toBe(await paper('.short-person input'));
  await page.getByLabel('Your name').fill('Ana');
  for (const alloy of alloys) {
    await alloyField(page).fill(alloy);
    await alloyField(page).press('Enter');
  }
  await page.getByText('6 are as many as can be compared: set 1 aside to compare the others.').waitFor();
  await entry(page, 'Mn').getByLabel('How far').selectOption('set aside');
  await page.getByRole('link', { name: 'Compare the 6 that are not set aside' }).click();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(6);
  expect(new URL(page.url()).searchParams.getAll('alloy')).not.toContain('Fe50Mn50');
  // The pages of alloys go on from the same list.
  await page.locator('.compare-alloy a').first().click();
  await page.getByRole('button', { name: '✓ In the comparison' }).waitFor();
  await page.getByRole('link', { name: 'See the 6 compared' }).waitFor();
});

test('an alloy that is none is refused beside its field, in words', async () => {
  const { page } = await as('Ana');
  await alloyField(page).fill('CoXx');
  await alloyField(page).press('Enter');
  await page.getByRole('alert').getByText(/Xx/).waitFor();
});

test('no finding of the accessibility checker in light on a wide screen, in dark on a phone', async () => {
  for (const [path, ready] of [
    ['/shortlists', 'Cold impeller'],
    [`/shortlists/${id}`, 'Add it'],
  ] as const) {
    const { page } = await site.visit(path, wideAndLight);
    for (const turn of [null, turnNarrowAndDark]) {
      await turn?.(page);
      await page.getByText(ready).first().waitFor();
      const { violations } = await axeOf(page);
      expect(violations.map((one) => `${path}: ${one.id}`)).toEqual([]);
      const wide = await page.evaluate('document.documentElement.scrollWidth > window.innerWidth');
      expect(wide, `${path} scrolls sideways`).toBe(false);
    }
  }
});
