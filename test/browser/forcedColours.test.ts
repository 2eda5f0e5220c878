import type { CandidatePage } from '@tiegel/contract';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSite, type Site } from './site.ts';

let site: Site;
let search: string;
let candidate: string;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: object }>('/demonstration');
  search = (await site.finish(specification)).id;
  const { items } = await site.api<CandidatePage>(`/searches/${search}/candidates?limit=1`);
  candidate = Object.entries(items[0]!.composition).flat().join('');
});
afterAll(() => site?.close());

/** The different grounds of what a selector finds, without those of the page itself. */
const grounds = (page: Page, selector: string, part = '') =>
  page.evaluate<string[]>(`(() => {
    const ground = (element, part) => getComputedStyle(element, part).backgroundColor;
    const all = [...document.querySelectorAll(${JSON.stringify(selector)})].map((one) => ground(one, '${part}'));
    return [...new Set(all)].filter((one) => one !== ground(document.documentElement));
  })()`);

// Windows' high contrast: a browser takes away every background that it is not told to leave.
test.each(['light', 'dark'] as const)(
  'in forced colours, %s, what is told by colour alone is still there',
  async (colorScheme) => {
    const { page } = await site.visit(`/searches/${search}`, { forcedColors: 'active', colorScheme });
    const row = page.locator('.candidate').first();
    await row.locator('td').nth(2).click();
    expect(await grounds(page, '.candidate .share-bar > span')).not.toHaveLength(0);
    expect(await grounds(page, '.limit-track > span')).toHaveLength(1);
    expect(await grounds(page, '.candidate-selected > td')).toHaveLength(1);
    const lines = await page.evaluate<string[]>(
      `[...document.querySelectorAll('.view-links a')].map((link) => getComputedStyle(link).borderBottomColor)`,
    );
    expect(lines.filter((line) => line === lines[0])).toHaveLength(1);

    await page.goto(`${site.url}/searches/${search}/candidates/${candidate}`);
    await page.locator('.pair-map td').first().waitFor();
    await page.locator('.class-bar').first().waitFor();
    expect((await grounds(page, '.share-bar-labelled > span', '::before')).length).toBeGreaterThan(2);
    expect(await grounds(page, '.class-bar > span')).toHaveLength(1);
    expect(await grounds(page, '.mode-bar')).toHaveLength(2);
    expect((await grounds(page, '.pair-map td')).length).toBeGreaterThan(1);

    await page.goto(`${site.url}/data/pairs?show=matrix&element=Al,Co,Cr,Cu,Fe,Ni`);
    await page.locator('.pair-matrix td').first().waitFor();
    expect((await grounds(page, '.pair-matrix tbody td')).length).toBeGreaterThan(2);
    expect((await grounds(page, '.matrix-key')).length).toBeGreaterThan(5);
  },
);

test('in forced colours points keep the colours of the third quantity', async () => {
  const { page } = await site.visit(`/searches/${search}?view=scatter`, { forcedColors: 'active' });
  await page.locator('.scatter svg .axis').first().waitFor();
  await expect
    .poll(() =>
      page.evaluate<number>(`(() => {
        const canvas = document.querySelector('.scatter canvas');
        const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
        const colours = new Set();
        for (let at = 0; at < data.length; at += 4)
          if (data[at + 3] === 255) colours.add(data.slice(at, at + 3).join());
        return colours.size;
      })()`),
    )
    .toBeGreaterThan(5);
});
