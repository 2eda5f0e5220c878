import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

async function form(options = {}): Promise<{ page: Page; wrongs: string[] }> {
  const visit = await site.visit('/ask', options);
  await visit.page.locator('.card').first().waitFor();
  return visit;
}

async function asDemonstration(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.size-numbers').waitFor();
}

const question = (page: Page) => textOf(page.locator('.size-live'));
const json = (page: Page) => page.locator('#specification-text');
const openJson = (page: Page) => page.locator('summary', { hasText: 'The specification as JSON' }).click();
const begin = (page: Page) => page.locator('summary', { hasText: 'Begin from' });
const picked = (page: Page) => page.locator('.card[aria-pressed="true"]');

test.each(['Cold service', 'Hot service', 'Light'])(
  'the template “%s” is a search that finds alloys',
  async (name) => {
    const { page, wrongs } = await form();
    await page.getByRole('button', { name, exact: true }).click();
    await page.locator('.size-numbers').waitFor();
    await openJson(page);
    const { counts } = await site.finish(JSON.parse(await json(page).inputValue()));
    expect(counts.passed).toBeGreaterThan(100);
    expect(counts.passed).toBeLessThan(counts.points / 2);
    expect(wrongs).toEqual([]);
  },
);

test('an earlier search fills the form, and what stood there can be brought back', async () => {
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  await site.finish({ ...specification, name: 'An earlier one', components: 6 });
  const { page } = await form();
  await page.getByRole('button', { name: 'Cold service', exact: true }).click();
  await eventually(() => question(page)).toContain('Four or five of Co Cr');
  await begin(page).click();
  await page.getByLabel('Earlier search').selectOption({ label: (await labelOf(page, 'An earlier one'))! });
  await page.getByRole('button', { name: 'Fill the form' }).click();
  await eventually(() => question(page)).toContain('Six of Al Cr');
  await page.getByRole('button', { name: 'Bring back what stood there' }).click();
  await eventually(() => question(page)).toContain('Four or five of Co Cr');
});

test('the page of an alloy leads to a search near it; limits that stood in the form stay', async () => {
  const { page, wrongs } = await form();
  await asDemonstration(page);
  await page.goto(`${site.url}/alloys/CoCrFeMnNi`);
  await page.getByRole('link', { name: 'Search near it' }).click();
  await eventually(() => question(page)).toMatch(/^Five of Co Cr Fe Mn Ni.*density ≤ 8/);
  expect(new URL(page.url()).search).toBe('');
  await page.getByRole('button', { name: 'Bring back what stood there' }).click();
  await eventually(() => question(page)).toContain('Five or six of Al Cr Cu');
  await page.goto(`${site.url}/ask?like=CoXx`);
  await page.getByText('What this address begins with cannot be shown.').waitFor();
  expect(wrongs).toEqual([]);
});

/** The label of the option that begins so. */
async function labelOf(page: Page, start: string): Promise<string | undefined> {
  const labels = await page.getByLabel('Earlier search').locator('option').allTextContents();
  return labels.find((label) => label.startsWith(start));
}

test('a known alloy spans a neighbourhood; what is wrong stands at its field and a reload keeps it', async () => {
  const { page } = await form();
  const alloy = page.getByLabel('Alloy, in at.%');
  await alloy.fill('Cr20Fe40Nii40');
  await page.getByLabel('Shares within ±').fill('none');
  await page.getByLabel('Partners that may come in').fill('Mo, Qq');
  await page.getByRole('button', { name: 'Fill elements and shares' }).click();
  await eventually(() => alloy.getAttribute('aria-invalid')).toBe('true');
  const faultOf = async (label: string) => {
    const id = await page.getByLabel(label).getAttribute('aria-describedby');
    return textOf(page.locator(`[id="${id}"]`));
  };
  expect(await faultOf('Alloy, in at.%')).toMatch(/Nii?/);
  expect(await faultOf('Shares within ±')).toContain('not a number');
  expect(await faultOf('Partners that may come in')).toMatch(/Qq.*such as Mo, V/);
  expect(await picked(page).count()).toBe(0);

  await page.reload();
  await page.locator('.card').first().waitFor();
  expect(await alloy.inputValue()).toBe('Cr20Fe40Nii40');
  await alloy.fill('Cr20Fe40Ni40');
  await page.getByLabel('Shares within ±').fill('5');
  await page.getByLabel('Partners that may come in').fill('Mo');
  await page.getByRole('button', { name: 'Fill elements and shares' }).click();
  await eventually(() => question(page)).toMatch(
    /Three or four of Cr Fe Mo Ni, with Cr Fe Ni.*Cr 15 to 25, Fe 35 to 45, Mo ≤ 5, Ni 35 to 45/,
  );
});

test('a pool is saved under a name, taken again after a reload, forgotten and brought back', async () => {
  const { page } = await form();
  await page.getByLabel('This pool as').fill('Refractories');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Mark elements first').waitFor();
  for (const symbol of ['Mo', 'Nb', 'W']) await page.locator(`[data-symbol="${symbol}"]`).click();
  await page.getByLabel('Niobium at most, at.%').fill('40');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Saved in this browser as “Refractories”.').waitFor();

  await page.getByRole('button', { name: 'Empty the form' }).click();
  await page.reload();
  await page.locator('.card').first().waitFor();
  const pools = page.getByLabel('A pool');
  await pools.selectOption({ label: 'Refractories' });
  await page.getByRole('button', { name: 'Take it' }).click();
  await eventually(() => picked(page).count()).toBe(3);
  expect(await page.getByLabel('Niobium at most, at.%').inputValue()).toBe('40');

  await page.getByRole('button', { name: 'Forget it' }).click();
  expect(await pools.locator('option').allTextContents()).toEqual(['as the demonstration']);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  expect(await pools.locator('option').allTextContents()).toContain('Refractories');
  await pools.selectOption({ label: 'as the demonstration' });
  await page.getByRole('button', { name: 'Take it' }).click();
  await eventually(() => picked(page).count()).toBe(10);
});

test('a whole group is picked by keyboard, a whole family by a click', async () => {
  const { page, wrongs } = await form();
  await page.locator('[data-symbol="Ti"]').focus();
  await page.keyboard.press('ArrowUp');
  const head = page.locator('[data-group="4"]');
  expect(await head.evaluate((element) => element.matches(':focus'))).toBe(true);
  expect(await head.getAttribute('aria-label')).toBe('Group 4, Ti Zr Hf: picks all');
  await page.keyboard.press('Enter');
  await eventually(() => picked(page).count()).toBe(3);
  await page.keyboard.press('+');
  await eventually(() => page.locator('.card-require').count()).toBe(3);
  await page.keyboard.press('Delete');
  await eventually(() => picked(page).count()).toBe(0);
  await page.getByRole('button', { name: /^alkaline earth metal/ }).click();
  expect(await picked(page).count()).toBeGreaterThan(2);
  await page.getByRole('button', { name: /^alkaline earth metal/ }).click();
  expect(await picked(page).count()).toBe(0);
  expect(wrongs).toEqual([]);
});

test('an element that lacks what the search needs says which value, on its card and in its line', async () => {
  const { page } = await form();
  // Carbon sublimes: it has no melting temperature.
  const carbon = page.locator('[data-symbol="C"]');
  expect(await textOf(carbon)).not.toContain('lacks');
  await page.getByLabel('Ranking 1: quantity').selectOption('meltingTemperature');
  await eventually(() => textOf(carbon)).toContain(
    'lacks the melting temperature, which melting temperature needs',
  );
  await carbon.click();
  expect(await textOf(page.locator('.pool-lack'))).toContain('lacks the melting temperature');
  expect(await textOf(page.locator('.readout'))).toContain('Carbon lacks the melting temperature');
});

test('the text and the form follow each other, and a text that is wrong stays through a reload', async () => {
  const { page, wrongs } = await form();
  await asDemonstration(page);
  await openJson(page);
  const text = json(page);
  await text.fill((await text.inputValue()).replace('"max": 6 }', '"max": 5 }'));
  await eventually(() => question(page)).toMatch(/^Five of Al Cr/);
  await page.getByText('The form says the same.').waitFor();

  await page.getByLabel('Step of the grid').selectOption('2.5');
  await eventually(async () => JSON.parse(await text.inputValue()).fractions.step).toBe(2.5);
  await page.getByText('As the form says it.').waitFor();

  await text.fill((await text.inputValue()).replace('"density"', '"densty"'));
  await page.getByText('The form is left as it is until the text is right.').waitFor();
  expect(await textOf(page.locator('.json'))).toMatch(/limits\/0\/quantity.*densty.*density/);
  await page.reload();
  await openJson(page);
  await page.getByText('The form is left as it is until the text is right.').waitFor();
  expect(await text.inputValue()).toContain('densty');
  await page.getByRole('button', { name: 'Back to what the form says' }).click();
  expect(await text.inputValue()).not.toContain('densty');
  expect(wrongs).toEqual([]);
});

test('a specification is saved as a file and opened from one, without loss', async () => {
  const { page, wrongs } = await form();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  const whole = {
    ...specification,
    name: 'All of it',
    lets: { stiffnessByDensity: 'youngsModulus / density' },
    rank: [{ quantity: 'stiffnessByDensity', prefer: 'high' }],
    conditions: { serviceTemperature: 673.15 },
    keptOnly: [{ quantity: (await site.api<{ id: string }[]>('/late-quantities'))[0]!.id, min: 0 }],
    tally: 'all',
  };
  await openJson(page);
  await page.getByLabel('Specification file').setInputFiles({
    name: 'whole.spec.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(whole)),
  });
  await eventually(() => page.getByLabel('Name of the search').inputValue()).toBe('All of it');
  await page.locator('.size-numbers').waitFor();
  expect(await page.getByLabel('Service temperature').inputValue()).toBe('673.15');
  expect(await textOf(page.locator('.size-numbers'))).toContain('at most');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('all-of-it.spec.json');
  const chunks = await (await download.createReadStream()).toArray();
  expect(JSON.parse(Buffer.concat(chunks).toString())).toEqual(whole);
  await page.getByLabel('Name of the search').fill('Another');
  await eventually(async () => JSON.parse(await json(page).inputValue())).toEqual({
    ...whole,
    name: 'Another',
  });
  expect(wrongs).toEqual([]);
});

test('conditions show where something chosen depends on them', async () => {
  const { page } = await form();
  await asDemonstration(page);
  expect(await page.getByLabel('Service temperature').count()).toBe(0);
  await page.getByLabel('Ranking 1: quantity').selectOption('yieldStrengthFcc');
  const field = page.getByLabel('Service temperature');
  await field.fill('77');
  expect(await textOf(page.locator('[aria-labelledby="conditions-head"]'))).toContain('= −196 °C');
  await eventually(() => question(page)).toContain('service temperature 77 K');
  await field.fill('5000');
  await eventually(() => field.getAttribute('aria-invalid')).toBe('true');
});

test('the ways to begin fold away once the form is filled, but not under the pointer of who picks elements', async () => {
  const { page } = await form();
  const ways = begin(page).locator('..');
  expect(await ways.getAttribute('open')).toBe('');
  await page.locator('[data-symbol="Fe"]').click();
  await eventually(() => picked(page).count()).toBe(1);
  expect(await ways.getAttribute('open')).toBe('');
  await page.getByRole('button', { name: 'Light', exact: true }).focus();
  await page.keyboard.press('Enter');
  await eventually(() => ways.getAttribute('open')).toBeNull();
  // Focus does not vanish with the button that was pressed.
  expect(await begin(page).evaluate((element) => element.matches(':focus'))).toBe(true);
  await page.getByRole('button', { name: 'Empty the form' }).click();
  await eventually(() => ways.getAttribute('open')).toBe('');
});
