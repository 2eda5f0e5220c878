import { elements as outside } from 'chemical-elements';
import { describe, expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';
import { chargeText } from '../src/output/chargeText.ts';

const batch = ['--mass', '50', '--resolution', '0.001'];

interface Sheet {
  lines: { material: string; element: string; mass: number }[];
  total: number;
  order: string[];
  cautions: unknown[];
  resulting: Record<string, number>;
}

// Atomic masses of chemical-elements 2.3.3. Half a step of 0.001 g in 10 g is 5e-5 of a mass, so 0.002 at.% of a share of 20.
test('pure elements without a loss: masses, read back, are the alloy', async () => {
  const { lines, total, order, resulting, cautions }: Sheet = await jsonOf([
    'charge',
    'CoCrFeMnNi',
    ...batch,
  ]);
  expect(lines.map(({ material }) => material)).toEqual(['Co', 'Cr', 'Fe', 'Mn', 'Ni']);
  const moles = lines.map(
    ({ element, mass }) => mass / outside.find(({ symbol }) => symbol === element)!.mass!,
  );
  const sum = moles.reduce((whole, one) => whole + one, 0);
  for (const one of moles) expect(Math.abs((100 * one) / sum - 20)).toBeLessThanOrEqual(0.005);
  for (const share of Object.values(resulting)) expect(Math.abs(share - 20)).toBeLessThanOrEqual(0.002);
  for (const { mass } of lines) expect(mass).toBe(Number(mass.toFixed(3)));
  expect(Math.abs(total - 50)).toBeLessThanOrEqual(0.005);
  expect(order).toEqual(['Mn', 'Ni', 'Co', 'Fe', 'Cr']);
  expect(cautions.length).toBeGreaterThan(3);
});

test('a difference that is rounded to nothing has no minus', async () => {
  const sheet = await jsonOf(['charge', 'CoNi', ...batch]);
  const resulting = { Co: 50 - 1e-9, Ni: 50 - 1e-3 };
  const text = [...chargeText({ ...sheet, resulting }, { invented: null, number: null })].join('');
  expect(text).toMatch(/^Co .* \+0\.0000 /m);
  expect(text).toMatch(/^Ni .* -0\.0010 /m);
});

// Worked by hand in packages/charge/test/chargeSheet.test.ts.
test('a purity and a loss are made up for', async () => {
  const { lines }: Sheet = await jsonOf([
    'charge',
    'CoCrFeMnNi',
    ...batch,
    '--purity',
    'Mn=99.7',
    '--loss',
    'Mn=1.5',
  ]);
  expect(lines.map(({ mass }) => mass)).toEqual([10.471, 9.238, 9.922, 9.94, 10.428]);
});

test('options may be given several times or with commas', async () => {
  const words = ['charge', 'CoCrFeMnNi', ...batch];
  const often = await jsonOf([...words, '--loss', 'Mn=1.5', '--loss', 'Cr=0.2']);
  expect(await jsonOf([...words, '--loss', 'Mn=1.5, Cr=0.2'])).toEqual(often);
});

// By hand: 26.982 g of Al to 58.693 g of Ni are equal shares; of 50 g 15.747 and 34.253.
test('--wt takes the amounts as wt.%', async () => {
  const { lines }: Sheet = await jsonOf(['charge', 'Al26.982Ni58.693', '--wt', ...batch]);
  expect(lines.map(({ mass }) => mass)).toEqual([15.747, 34.253]);
});

describe('with a list of materials', () => {
  const head = 'material,contains,amounts,purity,price,currency\n';
  const charged = (csv: string, more: string[] = []) =>
    tiegel(
      ['charge', 'FeNb', '--mass', '100', '--resolution', '0.01', '--materials', '-', '--json', ...more],
      { input: head + csv },
    );

  test('the cheapest set is charged', async () => {
    const { out } = await charged('Nb,,,100,90,EUR\nFe,,,100,1,EUR\nFeNb66,Fe34Nb66,wt.%,98,40,EUR\n');
    expect(JSON.parse(out).lines).toMatchObject([
      { material: 'Fe', element: 'Fe', mass: 5.27 },
      { material: 'FeNb66', element: null, mass: 94.73 },
    ]);
  });

  test('what cannot be met is named', async () => {
    const ran = await charged('Fe,,,100,1,EUR\n');
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toMatch(/50 at\.% of Nb: no material has Nb.*\n.*\[charge\/cannot-be-met\]/);
  });

  test('a purity beside the list is refused', async () => {
    const ran = await charged('Fe,,,100,1,EUR\nNb,,,100,90,EUR\n', ['--purity', 'Fe=99']);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain('[charge/two-purities]');
  });
});

test('for reading, a sheet fits into 80 characters, with its cautions', async () => {
  const { out } = await tiegel(['charge', 'AlCoCrFeMnNiTi', ...batch, '--purity', 'Mn=99.7']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/Mn 99\.7 %/);
  expect(out).toMatch(/CAUTIONS.*not a safety assessment.*local\s+codes/s);
  expect(out).toContain('invented for demonstration');
});

test('what cannot be charged is refused with what would be right', async () => {
  const wrong = [
    [['--mass', '50'], 'command/usage'],
    [['--mass', 'much', '--resolution', '0.001'], 'command/usage'],
    [[...batch, '--purity', 'Mn'], 'command/usage'],
    [[...batch, '--loss', 'Mn=1,Mn=2'], 'command/usage'],
    [['--mass', '0', '--resolution', '0.001'], 'request/wrong-value'],
    [[...batch, '--loss', 'Zn=1'], 'charge/not-in-alloy'],
    [[...batch, '--purity', 'Mn=101'], 'request/wrong-value'],
    [['--mass', '0.05', '--resolution', '0.04'], 'charge/too-light'],
  ] as const;
  for (const [options, code] of wrong) {
    const ran = await tiegel(['charge', 'CoCrFeMnNi', ...options]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}]`);
  }
});
