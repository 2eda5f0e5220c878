import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let search: string;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = (await site.finish(specification)).id;
});
afterAll(() => site?.close());

/** Types into fields by their labels, loads the page again, and finds it there. */
async function survives(page: Page, typed: Record<string, string>, whole: () => Promise<unknown>) {
  const field = (label: string) => page.getByLabel(label, { exact: true }).first();
  for (const [label, text] of Object.entries(typed)) await field(label).fill(text);
  await page.reload();
  await whole();
  for (const [label, text] of Object.entries(typed))
    expect(await field(label).inputValue(), label).toBe(text);
}

test('an alloy that is being edited keeps amounts that cannot be read yet and that do not make 100', async () => {
  const { page, wrongs } = await site.visit('/alloys/CoCrFeMnNi');
  const whole = () => page.locator('.verdict-line').waitFor();
  await whole();
  await page.getByRole('spinbutton', { name: 'Iron, at.%' }).fill('30');
  await page.getByRole('spinbutton', { name: 'Cobalt, at.%' }).fill('1.2.3');
  await survives(
    page,
    {
      'Add an element': 'niob',
      'Service temperature': '9000',
      'Mass of the batch': 'fifty',
    },
    whole,
  );
  expect(await page.getByRole('spinbutton', { name: 'Iron, at.%' }).inputValue()).toBe('30');
  expect(await page.getByRole('spinbutton', { name: 'Cobalt, at.%' }).inputValue()).toBe('1.2.3');
  // What is mended is taken, and begins another alloy with nothing of it.
  await page.getByRole('spinbutton', { name: 'Cobalt, at.%' }).fill('20');
  await page.getByText('The amounts make 110').waitFor();
  await page.reload();
  await whole();
  await page.getByText('The amounts make 110').waitFor();
  await page.getByRole('button', { name: 'Undo all changes' }).click();
  await page.waitForURL(/Co20Cr20Fe20Mn20Ni20/);
  await page.goto(`${site.url}/alloys/AlNi`);
  await whole();
  expect(await page.getByRole('spinbutton').count()).toBe(2);
  expect(wrongs).toEqual([]);
});

test('a replacement, a comparison and an alloy to be looked up keep what is typed', async () => {
  const { page } = await site.visit('/alloys/CoCrFeMnNi?replace=Co');
  const replaced = () => page.locator('.substitutes').waitFor();
  await replaced();
  await survives(page, { By: 'Ni, Xx' }, replaced);
  await page.goto(`${site.url}/compare?alloy=CoNi`);
  const compared = () => page.locator('.compare-alloy').first().waitFor();
  await compared();
  await survives(page, { 'One more alloy, at.%': 'Co20 Cr' }, compared);
  await page.getByLabel('One more alloy, at.%').fill('FeNi');
  await page.getByRole('button', { name: 'Add to the comparison' }).click();
  await eventually(() => page.locator('.compare-alloy').count()).toBe(2);
  expect(await page.getByLabel('One more alloy, at.%').inputValue()).toBe('');
  await page.goto(`${site.url}/alloys`);
  const field = page.getByLabel('Alloy, at.%');
  await field.waitFor();
  await survives(page, { 'Alloy, at.%': 'AlCoCr' }, () => field.waitFor());
});

test('a filter and a row number that are being typed are kept, and what cannot be read is answered', async () => {
  const { page } = await site.visit(`/searches/${search}?at=10`);
  const there = () => page.locator('.candidates tbody a').first().waitFor();
  await there();
  await page.getByLabel('Show only').selectOption('omega');
  await survives(page, { 'at least': '1.5', 'at most': '12', 'Start at row': 'ten' }, there);
  expect(await page.getByLabel('Show only').inputValue()).toBe('omega');
  await page.getByRole('button', { name: 'Go', exact: true }).click();
  await page.getByText(/Write the number of a row, from 1 to/).waitFor();
  await page.getByLabel('at least', { exact: true }).fill('20');
  await page.getByRole('button', { name: 'Add filter' }).click();
  await page.getByText('lower the first or raise the second').waitFor();
});

test('a shortlist keeps a note, an alloy, a name and what is to be picked', async () => {
  const { id } = await site.api<{ id: string }>('/shortlists', { name: 'Trials', by: 'First shift' });
  await site.api(`/shortlists/${id}/pick`, { search, count: 1, onePerSystem: true, by: 'First shift' });
  const { page } = await site.visit(`/shortlists/${id}`);
  const there = () => page.locator('.short-entry').first().waitFor();
  await there();
  await page.getByLabel('Your name').fill('Second shift');
  await survives(page, { Note: 'cracked at the', 'An alloy, at.%': 'Co20 Cr', Pick: '7' }, there);
  expect(await page.getByLabel('Your name').inputValue()).toBe('Second shift');
  await page.goto(`${site.url}/shortlists`);
  const name = page.getByLabel('What for');
  await name.waitFor();
  await survives(page, { 'What for': 'Second round' }, () => name.waitFor());
});

test('a charge and a melt keep every field, wrong ones too', async () => {
  const { page } = await site.visit('/charge?alloy=CoCrFeMnNi');
  const sheet = () => page.getByLabel('Batch mass', { exact: true }).waitFor();
  await sheet();
  await survives(
    page,
    { 'Batch mass': '50 g', 'One step of the balance': '0,01', 'Alloy, at.%': 'CoCrFe Mn' },
    sheet,
  );
  await page.goto(`${site.url}/melts/new`);
  const melt = () => page.getByLabel('Hardness').waitFor();
  await melt();
  await page
    .getByRole('button', { name: /Add a material|One more material|Another material/ })
    .first()
    .click();
  await survives(page, { Hardness: '15x', Notes: 'two crucibles' }, melt);
  expect(await textOf(page.locator('main'))).not.toContain('undefined');
});
