import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { seriousFindings, turnNarrowAndDark, wideAndLight } from './axeOf.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const picture = readFileSync(join(import.meta.dirname, '../fixtures/grey.png'));

let site: Site;
let charge: string;
beforeAll(async () => {
  site = await openSite();
  const sheet = {
    composition: 'CoCrFeMnNi',
    mass: 50,
    resolution: 0.001,
    purity: { Mn: 99.7 },
    loss: { Mn: 1.5 },
  };
  charge = (await site.api<{ number: string }>('/charge-sheets', sheet)).number;
});
afterAll(() => site?.close());

/** Masses as the sheet has them, worked by hand in packages/charge/test/chargeSheet.test.ts, but for 0.1 g of chromium. */
const masses = { Co: '10.471', Cr: '9.338', Fe: '9.922', 'Mn 99.7 %': '9.94', Ni: '10.428' };

const melt = (more = {}) => ({
  ...{ name: 'An old one', date: '2026-11-20', charge, ingot: null, process: 'arc melting', anneal: null },
  weighed: Object.entries(masses).map(([material, mass]) => ({ material, mass: Number(mass) })),
  ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: 152, density: null, notes: '' },
  ...more,
});
const recorded = (more = {}) => site.api<{ id: string }>('/melts', melt(more));

async function fillMasses(page: Page): Promise<void> {
  for (const [material, mass] of Object.entries(masses))
    await page.getByLabel(`${material}: weighed`).fill(mass);
}

test('a melt is recorded from its charge sheet, with the composition that was weighed, and files', async () => {
  const { page, wrongs } = await site.visit('/melts');
  await page.getByText('No melt has been recorded here yet.').waitFor();
  await page.goto(`${site.url}/charge-sheets/${charge}`);
  await page.getByRole('link', { name: 'Record its melt' }).click();
  await page.getByText('to weigh 10.471 g').waitFor();
  await page.getByRole('button', { name: 'Record the melt' }).click();
  await page.getByText('5 things to mend above.').waitFor();
  await fillMasses(page);
  // By the atomic masses of any table: 9.338 instead of 9.238 g of chromium is 20.17 at.%.
  await eventually(() => textOf(page.locator('.melt-weighed tbody tr').nth(1))).toMatch(
    /Cr20\.17\d20\.000\+0\.17\d/,
  );

  await page.getByLabel('Name of the melt').fill('First trial');
  await page.getByRole('checkbox', { name: 'annealed' }).check();
  await page.getByLabel('Anneal at').fill('1473');
  await page.getByText('K (1200 °C)').waitFor();
  await page.getByLabel('for', { exact: true }).fill('24');
  await page.getByLabel('FCC').check();
  await eventually(() => textOf(page.locator('.melt-form'))).toContain('not how they were observed');
  await page.getByLabel('X-ray diffraction').check();
  await page.getByLabel('Hardness').fill('152,5');
  await page.getByRole('button', { name: 'Record the melt' }).click();
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
  await eventually(() => textOf(page.locator('.melt-facts'))).toMatch(
    /FCC by X-ray diffraction.*1473 K \(1200 °C\), 24 h/s,
  );

  await page
    .getByLabel('File to attach')
    .setInputFiles({ name: 'etched.png', mimeType: 'image/png', buffer: picture });
  await eventually(() => page.evaluate("document.querySelector('.melt-files img')?.naturalWidth")).toBe(48);
  await page
    .getByLabel('File to attach')
    .setInputFiles({ name: 'a.exe', mimeType: 'x/y', buffer: Buffer.from([0, 1, 2]) });
  await page.getByText('is none of the files that are kept here').waitFor();
  await page
    .getByLabel('File to attach')
    .setInputFiles({ name: 'half.png', mimeType: 'image/png', buffer: Buffer.alloc(0) });
  await page.getByText('“half.png” is empty. See that it was saved whole').waitFor();
  await page.getByRole('button', { name: 'Remove etched.png' }).click();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByRole('link', { name: 'etched.png' }).waitFor();
  expect(wrongs).toEqual([]);
});

test('an empty form blames nobody: what is lacking is said where somebody has been, and on the try to record', async () => {
  const { page, wrongs } = await site.visit('/melts/new');
  const material = page.getByLabel('Material', { exact: true });
  const faults = () => page.locator('.melt-form .fault').allTextContents();
  const record = page.getByRole('button', { name: 'Record the melt' });
  await material.waitFor();
  expect(await faults()).toEqual([]);
  expect(await page.getByText('to mend above').count()).toBe(0);
  await record.click();
  await page.getByText('One thing to mend above.').waitFor();
  expect(await faults()).toEqual(['Write what was weighed: at least one material with its mass.']);
  await page.reload();
  await material.fill('Fe');
  expect(await faults()).toEqual([]);
  await page.getByRole('textbox', { name: 'Weighed' }).focus();
  await page.keyboard.press('Tab');
  await eventually(faults).toEqual(['Write what the balance showed, in grams.']);
  await page.getByText('One thing to mend above.').waitFor();
  expect(await record.getAttribute('aria-disabled')).toBe('true');
  expect(wrongs).toEqual([]);
});

test('a melt without a charge sheet says itself what its materials are', async () => {
  const { page } = await site.visit('/melts/new');
  await page.getByLabel('Material', { exact: true }).fill('Fe');
  await page.getByRole('textbox', { name: 'Weighed' }).fill('10');
  await page.getByRole('button', { name: 'Add a material' }).click();
  const second = page.locator('.melt-row').nth(1);
  await second.getByLabel('Material', { exact: true }).fill('FeNb66');
  await second.getByLabel('Weighed', { exact: true }).fill('10');
  await second.getByLabel('Contains').fill('Fe34Nb66');
  // By hand: 13.4 g of iron (55.845 u) and 6.6 g of niobium (92.906 u) are 22.84 at.% of niobium.
  await eventually(() => textOf(page.locator('.melt-weighed tbody tr').nth(1))).toMatch(/^Nb22\.84/);
  await page.getByLabel('Charge sheet').fill('C-9999');
  await page.getByText('There is no charge sheet with the number C-9999.').waitFor();
  await page.getByLabel('Day of the melt').fill('2999-01-01');
  await page.getByText('This day is still to come').waitFor();
  await page.getByLabel('Day of the melt').fill('');
  await page.getByText('Write the day on which it was melted.').waitFor();
  await page.getByLabel('Ingot').fill('21');
  await page.getByText('The ingot weighs more than the 20.000 g').waitFor();
  await page.getByLabel('Hardness').fill('-1');
  await page.getByText('-1 is not possible here. Write a number above 0').waitFor();
});

test('what is probably a slip is said at its field before it is recorded, and does not stand in the way', async () => {
  const { page, wrongs } = await site.visit(`/melts/new?charge=${charge}`);
  await fillMasses(page);
  await page.getByLabel('Ingot').fill('49.9');
  await page.getByLabel('Density').fill('7.94');
  await eventually(() => page.locator('.melt-weighed tbody tr').count()).toBe(5);
  const doubts = page.locator('.melt-form [role=status]').filter({ hasText: /see / });
  expect(await doubts.count()).toBe(0);
  await page.getByLabel('Cr: weighed').fill('1029.5');
  await page.getByText(/^Cr: 1029\.5 g were weighed, and the charge sheet says 9\.2\d\d g: see/).waitFor();
  await page.getByText(/^The ingot is \d+ % lighter than the 10\d\d\.\d\d\d g/).waitFor();
  await page.getByLabel('Cr: weighed').fill(masses.Cr);
  await page.getByLabel('Density').fill('1.5');
  await page.getByText(/^A density of 1\.5 g\/cm³ is far from the [78]\.\d\d g\/cm³/).waitFor();
  expect(await doubts.count()).toBe(1);
  await page.getByRole('button', { name: 'Record the melt' }).click();
  await page.waitForURL(/\/melts\/(?!new)/);
  // Whoever reads the melt later hears of it, too.
  await page.getByText(/^A density of 1\.5 g\/cm³ is far from/).waitFor();
  expect(await page.getByRole('region', { name: 'What is doubtful' }).getByRole('listitem').count()).toBe(1);
  expect(wrongs).toEqual([]);
});

test('a reload keeps the form; what was recorded leaves it empty', async () => {
  const { page } = await site.visit(`/melts/new?charge=${charge}`);
  await fillMasses(page);
  await page.getByLabel('Name of the melt').fill('Kept');
  await page.getByLabel('B2').check();
  await page.reload();
  await eventually(() => page.getByLabel('Cr: weighed').inputValue()).toBe('9.338');
  expect(await page.getByLabel('Name of the melt').inputValue()).toBe('Kept');
  expect(await page.getByLabel('B2').isChecked()).toBe(true);
  await page.getByLabel('light microscopy').check();
  await page.getByRole('button', { name: 'Record the melt' }).click();
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
  await page.goto(`${site.url}/melts/new`);
  await eventually(() => page.getByLabel('Name of the melt').inputValue()).toBe('');
});

test('a change is kept beside what stood before', async () => {
  const { id } = await recorded({ name: 'To be changed' });
  const { page, wrongs } = await site.visit(`/melts/${id}`);
  await page.getByRole('button', { name: 'Change' }).click();
  await page.getByLabel('Hardness').fill('160');
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(page.locator('.melt-facts'))).toContain('160 HV');
  // An answer that was lost is not taken for somebody else's change.
  await page.getByRole('button', { name: 'Change' }).click();
  await page.getByLabel('Hardness').fill('161');
  let lost = 0;
  await page.route(`**/api/v1/melts/${id}`, async (route) => {
    if (route.request().method() !== 'PUT' || lost > 0) return route.continue();
    lost += 1;
    await route.fetch();
    return route.abort();
  });
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await page.getByText('Whether it was changed is not known').waitFor();
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(page.locator('.melt-facts'))).toContain('161 HV');
  await page.getByText('History: 3 versions').waitFor();
  // Nor where the form was changed once more before it was saved again.
  lost = 0;
  await page.getByRole('button', { name: 'Change' }).click();
  await page.getByLabel('Hardness').fill('162');
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await page.getByText('Whether it was changed is not known').waitFor();
  await page.getByLabel('Hardness').fill('163');
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(page.locator('.melt-facts'))).toContain('163 HV');
  await page.getByText('History: 5 versions').click();
  expect(await textOf(page.locator('.melt-history'))).toMatch(/hardness 152 → 160/);
  await page.emulateMedia({ media: 'print' });
  expect(await page.getByText(`from ${site.url}/melts/${id}`).isVisible()).toBe(true);
  expect(await page.locator('button:visible, .button:visible').count()).toBe(0);
  expect(wrongs).toEqual([]);
});

test('two people who change one melt at once lose nothing', async () => {
  const { id } = await recorded({ name: 'Of two people' });
  const one = await site.visit(`/melts/${id}`);
  const other = await site.visit(`/melts/${id}`);
  for (const { page } of [one, other]) await page.getByRole('button', { name: 'Change' }).click();
  await one.page.getByLabel('Hardness').fill('160');
  await other.page.getByLabel('Density').fill('7.9');
  await one.page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(one.page.locator('.melt-facts'))).toContain('160 HV');
  await other.page.getByRole('button', { name: 'Save the changes' }).click();
  await other.page.getByText('Somebody else changed this melt while you did').waitFor();
  expect(await other.page.getByLabel('Density').inputValue()).toBe('7.9');
  expect((await site.api<{ hardness: number }>(`/melts/${id}`)).hardness).toBe(160);
  await other.page.getByRole('button', { name: 'Bring your changes onto theirs' }).click();
  await eventually(() => other.page.getByLabel('Hardness').inputValue()).toBe('160');
  await other.page.reload();
  await eventually(() => other.page.getByLabel('Density').inputValue()).toBe('7.9');
  await other.page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(other.page.locator('.melt-facts'))).toMatch(/160 HV.*7\.90 g/);
});

test('two people who change the same of one melt choose what stands', async () => {
  const { id } = await recorded({ name: 'Measured by two' });
  const one = await site.visit(`/melts/${id}`);
  const other = await site.visit(`/melts/${id}`);
  for (const { page } of [one, other]) await page.getByRole('button', { name: 'Change' }).click();
  await one.page.getByLabel('Hardness').fill('160');
  await one.page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(one.page.locator('.melt-facts'))).toContain('160 HV');
  const { page } = other;
  await page.getByLabel('Hardness').fill('171');
  await page.getByLabel('Notes').fill('after a second grinding');
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await page.getByRole('button', { name: 'Bring your changes onto theirs' }).click();
  await page.getByText('You both changed the same.').waitFor();
  const take = page.getByRole('button', { name: 'Take what is chosen' });
  expect(await take.getAttribute('aria-disabled')).toBe('true');
  expect(await page.getByRole('group', { name: 'Hardness, HV' }).textContent()).toMatch(
    /yours: 171.*theirs: 160/,
  );
  await page.getByRole('radio', { name: 'theirs: 160' }).check();
  // A reload loses neither what was changed nor what was chosen, and what clashes stands open as before.
  await page.reload();
  await page.getByText('You both changed the same.').waitFor();
  expect(await page.getByText('Somebody else changed this melt while you did').count()).toBe(1);
  expect(await page.getByLabel('Hardness').inputValue()).toBe('171');
  // The choice is between what the form says by now and theirs.
  await page.getByLabel('Hardness').fill('172');
  await page.getByRole('radio', { name: 'yours: 172' }).waitFor();
  expect(await page.getByRole('radio', { name: 'theirs: 160' }).isChecked()).toBe(true);
  await take.click();
  await eventually(() => page.getByLabel('Hardness').inputValue()).toBe('160');
  expect(await page.getByLabel('Notes').inputValue()).toBe('after a second grinding');
  await page.getByRole('button', { name: 'Save the changes' }).click();
  await eventually(() => textOf(page.locator('.melt-facts'))).toMatch(/160 HV.*after a second grinding/);
  // What is saved is over: the next change begins from the newest version.
  await page.getByRole('button', { name: 'Change' }).click();
  await page.getByLabel('Hardness').waitFor();
  expect(await page.getByText('Somebody else changed').count()).toBe(0);
});

test('a deleted melt is brought back from the list', async () => {
  const { id } = await recorded({ name: 'Deleted by mistake' });
  const { page } = await site.visit(`/melts/${id}`);
  await page.getByRole('button', { name: 'Delete' }).click();
  await page.waitForURL(/\/melts$/);
  await page.getByText('“Deleted by mistake” was deleted.').waitFor();
  await eventually(() => page.getByRole('link', { name: 'Deleted by mistake' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByRole('link', { name: 'Deleted by mistake' }).waitFor();
});

describe('where something does not answer', () => {
  test('a melt that is not there, and a list that cannot be fetched, say so', async () => {
    const { page } = await site.visit('/melts/nobody');
    await page.getByText('There is no melt with the id nobody.').waitFor();
    await page.route('**/api/v1/melts', (route) => route.abort());
    await page.goto(`${site.url}/melts`);
    await page.getByText('The list of melts cannot be shown.').waitFor();
  });

  test('a record whose answer was lost is one melt, not two', async () => {
    const { page } = await site.visit(`/melts/new?charge=${charge}`);
    await fillMasses(page);
    await page.getByLabel('Name of the melt').fill('Sent twice');
    let lost = 0;
    await page.route('**/api/v1/melts', async (route) => {
      if (route.request().method() !== 'POST' || lost > 0) return route.continue();
      lost += 1;
      await route.fetch();
      return route.abort();
    });
    await page.getByRole('button', { name: 'Record the melt' }).click();
    await page.getByText('Whether it was recorded is not known; what you entered is kept').waitFor();
    // The key is kept with the form: a reload before the second press makes no second melt.
    await page.reload();
    await eventually(() => page.getByLabel('Cr: weighed').inputValue()).toBe('9.338');
    await page.getByRole('button', { name: 'Record the melt' }).click();
    await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
    const { items } = await site.api<{ items: { name: string }[] }>('/melts');
    expect(items.filter(({ name }) => name === 'Sent twice')).toHaveLength(1);
  });

  test('a form that was changed after a lost answer asks whether it is the same melt', async () => {
    const { page } = await site.visit(`/melts/new?charge=${charge}`);
    const names = async () =>
      (await site.api<{ items: { name: string }[] }>('/melts')).items
        .map(({ name }) => name)
        .filter((name) => name.startsWith('Lost'));
    const press = () => page.getByRole('button', { name: 'Record the melt' }).click();
    let losing = false;
    await page.route('**/api/v1/melts', async (route) => {
      if (route.request().method() !== 'POST' || !losing) return route.continue();
      losing = false;
      await route.fetch();
      return route.abort();
    });
    const lose = async () => {
      losing = true;
      await press();
      await page.getByText('Whether it was recorded is not known').waitFor();
    };
    await fillMasses(page);
    await page.getByLabel('Name of the melt').fill('Lost 1');
    await lose();
    await page.getByLabel('Name of the melt').fill('Lost 1, corrected');
    await press();
    await page.getByText('Nothing was recorded twice.').waitFor();
    await page.getByRole('button', { name: 'Change that melt to what stands here' }).click();
    await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
    expect(await names()).toEqual(['Lost 1, corrected']);

    await page.goto(`${site.url}/melts/new?charge=${charge}`);
    await fillMasses(page);
    await page.getByLabel('Name of the melt').fill('Lost 2');
    await lose();
    await page.getByLabel('Name of the melt').fill('Lost 3');
    await press();
    await page.getByRole('button', { name: 'Record this as another melt' }).click();
    await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
    expect((await names()).sort()).toEqual(['Lost 1, corrected', 'Lost 2', 'Lost 3']);
  });
});

test('a melt is entered on a phone, and nothing is wider than the screen', async () => {
  const { page, wrongs } = await site.visit(`/melts/new?charge=${charge}`, phone);
  const fits = () => page.evaluate('document.documentElement.scrollWidth <= 390');
  await page.getByText('to weigh 10.471 g').waitFor();
  await fillMasses(page);
  await page.locator('.melt-weighed').waitFor();
  await page.getByRole('button', { name: 'Add a material' }).tap();
  expect(await fits()).toBe(true);
  await page.getByRole('button', { name: 'Record the melt' }).tap();
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
  await page.locator('.melt-facts').waitFor();
  expect(await fits()).toBe(true);
  await page.goto(`${site.url}/melts`);
  await page.locator('.melt-line').first().waitFor();
  expect(await fits()).toBe(true);
  expect(wrongs).toEqual([]);
});

test('a melt is recorded by keyboard alone', async () => {
  const { page } = await site.visit('/melts/new');
  const named = () =>
    page.evaluate<string>(`(() => {
      const { activeElement: element } = document;
      return (element.labels?.[0]?.textContent ?? element.textContent ?? '').trim();
    })()`);
  const tabTo = async (name: string) => {
    for (let presses = 0; presses < 80; presses++) {
      await page.keyboard.press('Tab');
      if ((await named()) === name) return;
    }
    throw new Error(`No Tab leads to ${name}.`);
  };
  await page.getByLabel('Name of the melt').waitFor();
  await tabTo('Name of the melt');
  await page.keyboard.type('By keyboard');
  await tabTo('Material');
  await page.keyboard.type('Ni');
  await tabTo('Weighed');
  await page.keyboard.type('12.5');
  await tabTo('FCC');
  await page.keyboard.press(' ');
  await tabTo('X-ray diffraction');
  await page.keyboard.press(' ');
  await tabTo('Record the melt');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
  await page.getByRole('heading', { name: /By keyboard/ }).waitFor();
});

test.each(['list', 'form', 'melt'])(
  'axe finds nothing serious in the %s in light on a wide screen, in dark on a phone',
  async (name) => {
    const { id } = await recorded();
    const addresses: Record<string, string> = {
      ...{ list: '/melts', form: `/melts/new?charge=${charge}`, melt: `/melts/${id}` },
    };
    const { page } = await site.visit(addresses[name]!, wideAndLight);
    const isWhole = () => page.locator('.melt-line, .melt-row, .melt-facts').first().waitFor();
    await isWhole();
    expect(await seriousFindings(page)).toEqual([]);
    await turnNarrowAndDark(page);
    await isWhole();
    expect(await seriousFindings(page)).toEqual([]);
  },
);

test('a melt stands among the nearest alloys of its alloy, told from the published ones by words, and leads to its page', async () => {
  const { id } = await recorded({ name: 'Nearby trial' });
  const { page, wrongs } = await site.visit('/alloys/Co20Cr20Fe20Mn20Ni20');
  const row = page.locator('.nearest-table tbody tr').filter({ hasText: 'Nearby trial' });
  await row.waitFor();
  expect(await textOf(row)).toMatch(/FCC, by X-ray diffraction.*● your melt, as weighed/s);
  await page
    .getByText(/In your own melt you observed FCC, by X-ray diffraction\./)
    .first()
    .waitFor();
  await row.getByRole('link', { name: '● your melt, as weighed' }).click();
  await page.waitForURL(new RegExp(`/melts/${id}$`));
  expect(wrongs).toEqual([]);
});

test('another lot of a material of the sheet is written in its row, which keeps its fields while they are emptied', async () => {
  const { page, wrongs } = await site.visit(`/melts/new?charge=${charge}`);
  await page.getByText('to weigh 10.471 g').waitFor();
  await fillMasses(page);
  await page.getByRole('button', { name: 'Another lot of Ni' }).click();
  await page.keyboard.type('95');
  await page.getByText('Ni: a purity of 95 wt.% was written').waitFor();
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
  await page.keyboard.type('99.5');
  await page.getByText('Ni: a purity of 99.5 wt.% was written').waitFor();

  // The name of a material of the sheet, on the way to another.
  await page.getByRole('button', { name: 'Add a material' }).click();
  const material = page.getByLabel('Material', { exact: true }).last();
  await material.focus();
  await page.keyboard.type('Co shot');
  expect(await material.inputValue()).toBe('Co shot');
  await page.getByRole('button', { name: 'Remove material 6' }).click();

  await page.getByRole('button', { name: 'Record the melt' }).click();
  await page.waitForURL(/\/melts\/[0-9a-z]{12}$/);
  const id = page.url().split('/').at(-1);
  const { weighed } = await site.api<{ weighed: { material: string }[] }>(`/melts/${id}`);
  expect(weighed.find((one) => one.material === 'Ni')).toMatchObject({ mass: 10.428, purity: 99.5 });
  expect(weighed.filter((one) => 'purity' in one)).toHaveLength(1);
  expect(wrongs).toEqual([]);
});
