import type { Distributions, SearchSpecification } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { seriousFindings, turnNarrowAndDark, wideAndLight } from './axeOf.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let demonstration: Partial<SearchSpecification>;
beforeAll(async () => {
  site = await openSite();
  ({ specification: demonstration } = await site.api<{ specification: typeof demonstration }>(
    '/demonstration',
  ));
});
afterAll(() => site?.close());

/** The form as the demonstration, with its sample drawn; `asked` are the bodies of requests for samples. */
async function sampled(options = {}): Promise<{ page: Page; wrongs: string[]; asked: string[] }> {
  const { page, wrongs } = await site.visit('/ask', options);
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/distributions')) asked.push(request.postData() ?? '');
  });
  await page.locator('.card').first().waitFor();
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.sample-summary').waitFor();
  await thumb(page, 'Density at most').waitFor({ state: 'attached' });
  await eventually(() => page.locator('.sample-stale').count()).toBe(0);
  return { page, wrongs, asked };
}

const thumb = (page: Page, name: string) => page.getByRole('slider', { name: new RegExp(`^${name}`) });
const limit = (page: Page, index: number) => page.locator(`#field-limits-${index}`);
const oneDecimal = new Intl.NumberFormat('en-US', { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const percent = (share: number) => `${oneDecimal.format(100 * share)} %`;

test('what limits leave of the sample is what the API counts on the same sample, and a moved limit asks nothing anew', async () => {
  const { page, wrongs, asked } = await sampled();
  const told = async (limits: unknown) =>
    site.api<Distributions>('/distributions', {
      specification: { ...demonstration, limits },
      sample: 4000,
      seed: 1,
    });
  const before = await told(demonstration.limits);
  const summary = page.locator('.sample-summary');
  expect(await textOf(summary)).toContain(`leave ${percent(before.passed)} ±`);
  expect(await textOf(summary)).toMatch(/random sample of 4,000 compositions.*95 % interval/);
  for (const [index, { share, shareWithout }] of before.limits.entries()) {
    const shares = await textOf(limit(page, index).locator('.limit-shares'));
    expect(shares).toContain(`Alone it leaves${percent(share)}`);
    expect(shares).toContain(`would be left${percent(shareWithout)}`);
  }
  // The limit on the valence electrons cuts most off: without it more than half as many again would pass.
  expect(await textOf(page.locator('.limit-tightest'))).toContain(percent(before.passed));
  expect(await limit(page, 3).locator('.limit-tightest').count()).toBe(1);

  const requests = asked.length;
  await limit(page, 2).getByLabel('at most', { exact: true }).fill('4');
  const limits = demonstration.limits!.map((one) =>
    one.quantity === 'sizeMismatch' ? { ...one, max: 4 } : one,
  );
  await eventually(() => textOf(summary)).toContain(`leave ${percent((await told(limits)).passed)}`);
  expect(asked.length).toBe(requests);
  expect(wrongs).toEqual([]);
});

test('a limit is moved by keyboard and by pointer, and taken away at the end of its axis', async () => {
  const { page } = await sampled();
  const most = limit(page, 0).getByLabel('at most', { exact: true });
  await thumb(page, 'Density at most').focus();
  await page.keyboard.press('ArrowLeft');
  await eventually(async () => Number(await most.inputValue())).toBeLessThan(8);
  await page.keyboard.press('End');
  await eventually(() => most.inputValue()).toBe('');
  await page.keyboard.press('PageDown');
  await eventually(() => most.inputValue()).not.toBe('');

  const least = limit(page, 0).getByLabel('at least', { exact: true });
  expect(await least.inputValue()).toBe('');
  const handle = limit(page, 0).locator('.thumb').first();
  await handle.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await handle.boundingBox())!;
  const bars = (await limit(page, 0).locator('.sample-bars').boundingBox())!;
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2 + bars.width / 4, y + height / 2, { steps: 4 });
  await page.mouse.up();
  // The axis goes from 5 to 9 g/cm³.
  await eventually(async () => Number(await least.inputValue())).toBeCloseTo(6, 0);
});

test('what limits leave is read out once a limit rests, not at every step of it', async () => {
  const { page } = await sampled();
  await page.evaluate(`(() => {
    window.spoken = [];
    const region = document.querySelector('.sample-summary [role=status]');
    const note = () => window.spoken.push(region.textContent);
    new MutationObserver(note).observe(region, { subtree: true, childList: true, characterData: true });
  })()`);
  const shown = page.locator('.sample-summary p').first();
  const before = await textOf(shown);
  await thumb(page, 'Size mismatch at most').focus();
  for (let step = 0; step < 12; step++) await page.keyboard.press('PageDown');
  await eventually(() => page.evaluate('window.spoken.length')).toBe(1);
  expect(await textOf(shown)).not.toBe(before);
  expect(
    String(await page.evaluate('window.spoken[0]'))
      .trim()
      .replaceAll('\u00a0', ' '),
  ).toContain((await textOf(shown)).trim());
});

test('what a thumb sets is written with the decimal sign of the reader', async () => {
  const { page } = await sampled({ locale: 'de-DE' });
  await thumb(page, 'Density at most').focus();
  await page.keyboard.press('ArrowLeft');
  await eventually(() => limit(page, 0).getByLabel('at most', { exact: true }).inputValue()).toMatch(/^7,9/);
});

test('where none of the sample passes, it says so as rarely as it can tell, and which limit to loosen', async () => {
  const { page } = await sampled();
  await limit(page, 3).getByLabel('at least', { exact: true }).fill('9.9');
  const summary = page.locator('.sample-summary');
  await eventually(() => textOf(summary)).toMatch(/leave fewer than 1 in 1,000 of the space/);
  expect(await textOf(summary)).toContain('Loosen the limit that is marked as the tightest');
  await page.getByRole('button', { name: 'Draw 20,000 compositions' }).click();
  await eventually(() => textOf(summary)).toMatch(/leave fewer than 1 in 5,200 of the space/);
});

test('a space smaller than the sample is looked at as a whole, and its shares are exact', async () => {
  const { page } = await sampled();
  await page.getByLabel('Equal shares only').check();
  const summary = page.locator('.sample-summary');
  await eventually(() => textOf(summary)).toMatch(/these shares are exact/);
  await eventually(() => textOf(summary)).not.toContain('±');
});

test('wishes that are combined begin with anchors from the sample, which are dragged over it', async () => {
  const { page, wrongs } = await sampled();
  await page.getByRole('button', { name: 'Combine with another quantity' }).click();
  await page.getByLabel('Ranking 2: quantity').selectOption('cost');
  const anchors = page.locator('.ask-anchors');
  await eventually(() => anchors.nth(1).getByLabel('worth 0 from').inputValue()).not.toBe('');
  await eventually(() => textOf(page.locator('.size-live'))).toContain(
    'best balance of low size mismatch, low cost',
  );
  expect(await page.locator('.worth-curve').count()).toBe(2);

  const cheap = anchors.nth(1).getByLabel('worth 1 up to');
  const before = Number(await cheap.inputValue());
  await thumb(page, 'Cost worth 1 up to').focus();
  await page.keyboard.press('ArrowRight');
  await eventually(async () => Number(await cheap.inputValue())).toBeGreaterThan(before);

  await page.getByLabel('Ranking 2: what is better').selectOption('target');
  const target = page.locator('#field-rank-1').getByLabel('target', { exact: true });
  await eventually(() => target.inputValue()).not.toBe('');
  const reach = anchors.nth(1).getByLabel('worth 0 when off by');
  const off = Number(await reach.inputValue());
  await thumb(page, 'Cost worth 0 above').focus();
  await page.keyboard.press('PageUp');
  await eventually(async () => Number(await reach.inputValue())).toBeGreaterThan(off);
  // An anchor that somebody empties stays empty, and is asked for.
  await reach.fill('');
  await eventually(() => textOf(page.locator('.size-live'))).toContain('One thing to mend');
  expect(await reach.inputValue()).toBe('');
  await page.getByRole('button', { name: 'Take them' }).click();
  await page.locator('.size-numbers').waitFor();
  expect(wrongs).toEqual([]);
});

test('a sample that cannot be drawn leaves the form as it is', async () => {
  const { page } = await site.visit('/ask');
  await page.locator('.card').first().waitFor();
  await page.route('**/distributions', (route) => route.abort());
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.locator('.size-numbers').waitFor();
  await page.getByText('No sample could be drawn').waitFor();
  expect(await limit(page, 0).getByLabel('at most', { exact: true }).inputValue()).toBe('8');
});

test('the form with everything in use has no serious finding in light on a wide screen, in dark on a phone', async () => {
  const { page } = await sampled(wideAndLight);
  await page.getByRole('button', { name: 'Combine with another quantity' }).click();
  await page.getByRole('button', { name: 'Combine with an expression' }).click();
  await page.getByLabel('Formula of merit').fill('youngsModulus / densty');
  await page.locator('.own-place').waitFor();
  await page.evaluate("document.querySelectorAll('main details').forEach((one) => { one.open = true; })");
  await page.getByRole('button', { name: 'Add a limit on the kept ones' }).click();
  await page.getByRole('button', { name: 'Weigh two aims' }).click();
  // The first aim is the first quantity of the ranking, wanted as the ranking wants it.
  const wanted = page.getByLabel('Ranking 1: what is better');
  expect(await page.getByLabel('Aim 1: what is better').inputValue()).toBe(await wanted.inputValue());
  await page.getByLabel('Partners that may come in').fill('Xx');
  await page.getByRole('button', { name: 'Fill elements and shares' }).click();
  await page.locator('.begin-way .fault').first().waitFor();
  for (const turn of [null, turnNarrowAndDark]) {
    await turn?.(page);
    expect(await seriousFindings(page)).toEqual([]);
    // Nothing is wider than the screen.
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  }
});
