import type { Candidate, CandidatePage } from '@tiegel/contract';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
/** a finished search with expressions of its own, and limits on them */
let search: string;
let best: Candidate;
beforeAll(async () => {
  site = await openSite();
  const { specification } = await site.api<{ specification: { limits: object[] } }>('/demonstration');
  const { id } = await site.finish({
    ...specification,
    limits: [...specification.limits, { quantity: 'yieldPerMass', min: 1 }],
    lets: { yieldPerMass: 'yieldStrengthFcc / density' },
    keptOnly: [{ quantity: 'hullDistance', max: 40 }],
  });
  search = id;
  best = (await site.api<CandidatePage>(`/searches/${id}/candidates?limit=1`)).items[0]!;
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

const pathOf = ({ composition }: Candidate) =>
  `/searches/${search}/candidates/${Object.entries(composition).flat().join('')}`;

test('a candidate shows the expressions of its search, its limits on them and those of the kept ones', async () => {
  const { page, wrongs } = await site.visit(pathOf(best));
  const line = page.locator('.expression');
  const value = (digits: number, quantity: string) =>
    best.quantities[quantity]!.toFixed(digits).replace('-', '−');
  await eventually(() => textOf(line)).toContain(value(3, 'yieldPerMass'));
  expect(await textOf(line)).toMatch(/^yieldPerMass.*MPa.*yieldStrengthFcc \/ density$/);
  const limit = (name: string) => page.locator('tr', { hasText: name });
  expect(await textOf(limit('yieldPerMass ≥'))).toMatch(new RegExp(`✓ met +${value(3, 'yieldPerMass')}`));
  const kept = limit('Hull distance ≤');
  await eventually(() => textOf(kept)).toMatch(new RegExp(`✓ met +${value(1, 'hullDistance')}`));
  expect(await textOf(kept)).toContain('40 kJ/mol applied to the kept ones only');
  // What the server tests on any alloy knows nothing of the search: it is not asked of its expressions, and says so.
  await eventually(() => textOf(page.locator('#weighing').locator('..'))).toMatch(
    /Not tested here, .*: yieldPerMass ≥ 1 MPa/,
  );
  await page
    .getByRole('button', { name: /^Replace/ })
    .first()
    .click();
  await eventually(() => textOf(page.locator('.replace'))).toMatch(
    /Not tested here, .*: yieldPerMass ≥ 1 MPa/,
  );

  // Another composition: its expression is worked out here, what only kept ones have is not known.
  await page.goto(`${site.url}/searches/${search}/candidates/CoCrFeMnNi`);
  await eventually(() => textOf(line)).toMatch(/^yieldPerMass\d+\.\d{3}/);
  await eventually(() => textOf(kept)).toContain('the search has it of its kept ones only');
  expect(await textOf(kept)).not.toContain('met');
  expect(wrongs).toEqual([]);
});
