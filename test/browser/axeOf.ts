import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * axe-core for a page without frames. Its usual mode puts the findings of frames together in a page of its
 * own, to which it hands everything that passed as well: most of its time, for nothing.
 */
export function axeOf(page: Page): AxeBuilder {
  expect(page.frames()).toHaveLength(1);
  return new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
}
