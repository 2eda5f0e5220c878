import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * What axe-core finds on a page without frames: its violations in whole, of all else little more than the rule.
 * A page gets axe once: to read half a megabyte takes longer than to look at a small page.
 */
export async function axeOf(page: Page, options: RunOptions = {}): Promise<AxeResults> {
  expect(page.frames()).toHaveLength(1);
  if (!(await page.evaluate<boolean>("'axe' in window"))) await page.evaluate(source);
  const asked = JSON.stringify({ resultTypes: ['violations'], ...options });
  return page.evaluate<AxeResults>(`axe.run(document, ${asked})`);
}

/** How a page is opened that is looked at in light on a wide screen first. */
export const wideAndLight = { colorScheme: 'light', viewport: { width: 1440, height: 900 } } as const;

/** The same visit in dark on a phone: most of a visit is the fetching of what is looked at. */
export async function turnNarrowAndDark(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize({ width: 390, height: 844 });
}

/** Rules with a serious or critical finding, each with its places, once everything that folds is open. */
export async function seriousFindings(page: Page): Promise<string[]> {
  await page.evaluate("document.querySelectorAll('main details').forEach((one) => { one.open = true; })");
  const { violations, passes } = await axeOf(page);
  expect(passes.length).toBeGreaterThan(10);
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
}
