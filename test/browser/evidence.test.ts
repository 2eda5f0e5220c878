import { afterAll, beforeAll, expect, test } from 'vitest';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

interface Evidence {
  criteria: { name: string; n: number | null; balancedAccuracy: number | null; untested: string | null }[];
  phaseEstimate: { auc: number; baseRate: number; reliability: object[] };
  strength: object[];
}

test('every rule stands with its record, or why it has none', async () => {
  const { criteria } = await site.api<Evidence>('/evidence');
  const { page, wrongs } = await site.visit('/evidence');
  const rows = page.locator('.criteria-table tbody tr');
  await eventually(() => rows.count()).toBe(criteria.length);
  for (const [at, { name, n, balancedAccuracy, untested }] of criteria.entries()) {
    const text = await textOf(rows.nth(at));
    expect(text).toContain(name);
    if (balancedAccuracy === null) expect(text).toContain(untested);
    else {
      expect(text).toContain(balancedAccuracy.toFixed(2));
      expect(text).toContain(String(n));
    }
  }
  // Published: 70 of 116 alloys of one solution have ΔS ≥ 1.5 R, and 155 of 194 others: 0.40, worse than a coin.
  expect(await textOf(rows.filter({ hasText: 'Usual definition' }))).toMatch(/0\.40.*70 right, 155 wrong/s);
  expect(wrongs).toEqual([]);
});

test('the estimate shows its reliability as a figure and a table, beside the base rate', async () => {
  const { phaseEstimate, strength } = await site.api<Evidence>('/evidence');
  const { page } = await site.visit('/evidence');
  const figure = page.getByRole('figure', { name: 'Reliability of the phase estimate' });
  await eventually(() => figure.locator('.reliability-dot').count()).toBe(phaseEstimate.reliability.length);
  await figure.getByText('The numbers as a table').click();
  expect(await figure.locator('tbody tr').count()).toBe(phaseEstimate.reliability.length);
  const scores = page.locator('tr', { hasText: 'AUC: tells one from more' });
  expect(await textOf(scores)).toContain(phaseEstimate.auc.toFixed(2));
  expect(
    await page
      .locator('section', { has: page.locator('#strengths') })
      .locator('tbody tr')
      .count(),
  ).toBe(strength.length);
});

test('melts of your own stand beside the published alloys, and say how little they are', async () => {
  const { page, wrongs } = await site.visit('/evidence');
  await page.locator('.criteria-table').waitFor();
  expect(await page.getByRole('columnheader', { name: 'Own melts' }).count()).toBe(0);
  await page.getByText(/still missing 20 melts, 5 systems, 5 of one solution, 5 of anything else/).waitFor();
  const melt = (symbols: string[], phase: string) =>
    site.api('/melts', {
      ...{ name: phase, date: '2026-11-25', charge: null, ingot: null, process: 'arc melting', anneal: null },
      weighed: symbols.map((material) => ({ material, mass: 10 })),
      ...{ phases: [phase], methods: ['X-ray diffraction'], hardness: null, density: null, notes: '' },
    });
  // 10 g of iron and nickel: VEC above 8, so the rule says fcc; niobium and tantalum have 5.
  await melt(['Fe', 'Ni'], 'FCC');
  await melt(['Nb', 'Ta'], 'BCC');
  await page.reload();
  await page.getByRole('columnheader', { name: 'Own melts' }).waitFor();
  const row = page.locator('.criteria-table tbody tr', { hasText: 'VEC ≥ 8' });
  expect(await textOf(row)).toMatch(/1\.00.*too few for an interval.*2.*1 right, 0 wrong.*1 right, 0 wrong/s);
  expect(await textOf(page.locator('.evidence-page'))).toContain('2 melts of 2 systems');
  await page.getByRole('heading', { name: 'The phase estimate on your own melts' }).waitFor();
  expect(wrongs).toEqual([]);
});

test('the estimate recalibrated on enough melts of your own stands beside the published one, and before that what is missing', async () => {
  const { page, wrongs } = await site.visit('/alloys/AlCoCrFeNi');
  const own = page.locator('.own-phase');
  await eventually(() => textOf(own)).toMatch(/still missing 20 melts|still missing 1[89] melts/);
  expect(await own.locator('.record-list').count()).toBe(0);
  // Five systems, five melts of each; three of five are observed as one solution.
  const systems = ['Co Cr Fe Ni', 'Co Cr Fe Mn Ni', 'Al Co Cr Fe Ni', 'Co Cr Cu Fe Ni', 'Al Co Cr Cu Fe Ni'];
  for (const system of systems) {
    for (const at of [0, 1, 2, 3, 4]) {
      await site.api('/melts', {
        ...{ name: `${system} ${at}`, date: '2026-11-25', charge: null, ingot: null, process: 'arc melting' },
        weighed: system.split(' ').map((material, place) => ({ material, mass: place === 0 ? 6 + at : 10 })),
        ...{ anneal: null, phases: at < 3 ? ['FCC'] : ['FCC', 'B2'], methods: ['X-ray diffraction'] },
        ...{ hardness: null, density: null, notes: '' },
      });
    }
  }
  await page.reload();
  await eventually(() => textOf(own)).toMatch(/Published estimate\s*0\.\d\d\s*Recalibrated on 2\d melts/);
  expect(await textOf(own)).toMatch(
    /0\.\d\d \(0\.\d\d to 0\.\d\d\).*Made from 2\d melts of \d systems, 15 of one solution/s,
  );
  // The published estimate stays where it was.
  const said = await site.api<{ phase: { singleSolution: number }; own: { singleSolution: number } }>(
    '/explain',
    {
      composition: 'AlCoCrFeNi',
    },
  );
  expect(await textOf(own)).toContain(`Published estimate${said.phase.singleSolution.toFixed(2)}`);
  expect(await textOf(own)).toContain(said.own.singleSolution.toFixed(2));
  await page.goto(`${site.url}/evidence`);
  await page.getByText(/^Made from 2\d melts/).waitFor();
  expect(wrongs).toEqual([]);
});

test('without an answer the page says so and asks again', async () => {
  const { page } = await site.visit('/nowhere');
  await page.route('**/api/v1/evidence', (route) => route.abort());
  await page.goto(`${site.url}/evidence`);
  await page.getByText('The evidence cannot be shown.').waitFor();
  await page.unroute('**/api/v1/evidence');
  await page.getByRole('button', { name: 'Ask again' }).click();
  await page.locator('.criteria-table').waitFor();
});
