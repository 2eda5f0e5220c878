import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

async function demonstration(): Promise<{ page: Page; wrongs: string[] }> {
  const visit = await site.visit('/ask');
  await visit.page.locator('.card').first().waitFor();
  await visit.page.getByRole('button', { name: 'As the demonstration' }).click();
  await visit.page.locator('.size-numbers').waitFor();
  // What comes late moves the rest of the form down, also between a press and its release.
  await visit.page.locator('.sample-bars').nth(4).waitFor();
  return visit;
}

const question = (page: Page) => textOf(page.locator('.size-live'));

test('an expression is written without a mouse: what is wrong is marked at its character, then it has unit and value and ranks', async () => {
  const { page, wrongs } = await demonstration();
  await page.getByRole('button', { name: 'Rank by an expression' }).focus();
  await page.keyboard.press('Enter');
  const formula = page.getByLabel('Formula of merit');
  await eventually(() => formula.evaluate((element) => element.matches(':focus'))).toBe(true);
  await page.keyboard.type('youngsModulus / densty');
  await eventually(() => page.locator('.own-place mark').textContent()).toBe('d');
  expect(await formula.getAttribute('aria-invalid')).toBe('true');
  const words = await textOf(page.locator(`[id="${await formula.getAttribute('aria-describedby')}"]`));
  expect(words).toMatch(/character 17.*did you mean "density"/i);

  for (const _ of 'ty') await page.keyboard.press('Backspace');
  await page.keyboard.type('ity');
  const own = page.locator('.own');
  await eventually(() => textOf(own)).toContain('Unit: GPa/(g/cm³)');
  await eventually(() => textOf(own)).toMatch(/it is \d+\.\d\d GPa/);
  await eventually(() => question(page)).toContain('highest merit');

  await page.getByLabel('Name of expression 1').fill('stiffnessByDensity');
  await eventually(() => question(page)).toContain('highest stiffnessByDensity');
  await page.keyboard.press('Control+Enter');
  await page.waitForURL(/\/searches\/[\w-]+$/);
  await page.locator('.candidates tbody tr[data-index]').first().waitFor();
  expect(wrongs).toEqual([]);
});

test('the value is that of the alloy typed beside it, and what is no alloy is told', async () => {
  const { page } = await demonstration();
  await page.locator('summary', { hasText: 'Expressions of one’s own' }).click();
  await page.getByRole('button', { name: 'Write an expression' }).click();
  await page.getByLabel('Formula of merit').fill('2 * valenceElectronConcentration');
  const own = page.locator('.own');
  const alloy = own.getByLabel('Of', { exact: true });
  await alloy.fill('Fe50Ni50');
  // 8 and 10 valence electrons.
  await eventually(() => textOf(own.locator('output'))).toBe('it is 18.00 ');
  await alloy.fill('Fe50Ny50');
  await eventually(() => textOf(own.locator('output'))).toMatch(/Ny/);
});

test('an expression is limited on its own distribution like any quantity', async () => {
  const { page } = await demonstration();
  await page.locator('summary', { hasText: 'Expressions of one’s own' }).click();
  await page.getByRole('button', { name: 'Write an expression' }).click();
  await page.getByLabel('Formula of merit').fill('density * cost');
  await page.getByRole('button', { name: 'Add a limit', exact: true }).click();
  await page.getByLabel('Limit 6: quantity').selectOption('merit');
  const row = page.locator('#field-limits-5');
  await row.locator('.sample-bars').waitFor();
  await row.getByLabel('at most').fill('100');
  await eventually(() => textOf(row.locator('.limit-shares'))).toMatch(/Alone it leaves\d+\.\d %/);
  await eventually(() => question(page)).toContain('merit ≤ 100');
});

test('a quantity is put in where the caret stands', async () => {
  const { page } = await demonstration();
  await page.locator('summary', { hasText: 'Expressions of one’s own' }).click();
  await page.getByRole('button', { name: 'Write an expression' }).click();
  const formula = page.getByLabel('Formula of merit');
  await formula.fill('2 * ( ) + 1');
  await formula.evaluate((element) =>
    (element as unknown as { setSelectionRange(from: number, to: number): void }).setSelectionRange(5, 6),
  );
  await page.getByLabel('Quantity to put in').selectOption('omega');
  // By a key: what is said of the formula comes late, and moves the button between a press and its release.
  await page.getByRole('button', { name: 'Put in' }).press('Enter');
  await eventually(() => formula.inputValue()).toBe('2 * (omega) + 1');
});

test('a name that is taken is told at the name', async () => {
  const { page } = await demonstration();
  await page.locator('summary', { hasText: 'Expressions of one’s own' }).click();
  await page.getByRole('button', { name: 'Write an expression' }).click();
  await page.getByLabel('Formula of merit').fill('omega / density');
  const name = page.getByLabel('Name of expression 1');
  await name.fill('density');
  await eventually(() => name.getAttribute('aria-invalid')).toBe('true');
  expect(await page.getByLabel('Formula of density').getAttribute('aria-invalid')).toBeNull();
});
