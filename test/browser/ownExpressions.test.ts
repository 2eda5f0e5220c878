import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
/** a finished search with expressions of its own, and limits on them */
let search: string;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: { limits: object[] } }>('/demonstration');
  const { id } = await site.finish({
    ...specification,
    limits: [...specification.limits, { quantity: 'yieldPerMass', min: 1 }],
    lets: { yieldPerMass: 'yieldStrengthFcc / density' },
  });
  search = id;
});
afterAll(() => site?.close());

test('an expression keeps its name and its unit where it begins a line of the search’s limits or a filter', async () => {
  const { page, wrongs } = await site.visit(`/searches/${search}?min.yieldPerMass=1.5`);
  const line = page.locator('.limit-table tr', { hasText: /yieldPerMass/i });
  await eventually(() => textOf(line.locator('th'))).toMatch(/^yieldPerMass ≥ 1 MPa/);
  await eventually(() => textOf(page.locator('.look'))).toMatch(/yieldPerMass ≥ 1\.5 MPa/);
  expect(await textOf(page.locator('main'))).not.toContain('YieldPerMass');
  expect(wrongs).toEqual([]);
});
