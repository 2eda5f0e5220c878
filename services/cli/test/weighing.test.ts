import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

const batch = ['--mass', '10', '--resolution', '0.1'];

interface Weighed {
  masses: Record<string, number>;
  shares: Record<string, { value: number; least: number; greatest: number }>;
  quantities: Record<string, { value: number | null; least: number | null; greatest: number | null }>;
  limits: { limit: { quantity: string }; passes: boolean; canFlip: boolean }[];
  criteria: Record<string, { passes: boolean | null; canFlip: boolean }>;
  trust: string;
}

// 10 g of NiAl are 6.8507 and 3.1493 g; by hand: VEC = 3 + 7 x, x = (6.7507/58.693) / (6.7507/58.693 + 3.2493/26.982) = 0.48851 and so on.
test('the interval of a quantity and what a limit comes to, by hand', async () => {
  const options = ['--min', 'valenceElectronConcentration=6.5', '--max', 'density=20'];
  const found: Weighed = await jsonOf(['weighing', 'AlNi', ...batch, ...options]);
  const { least, greatest } = found.quantities.valenceElectronConcentration!;
  expect(least).toBeCloseTo(3 + 7 * 0.48851, 3);
  expect(greatest).toBeCloseTo(3 + 7 * 0.511688, 3);
  expect(found.masses.Ni! + found.masses.Al!).toBeCloseTo(10, 9);
  expect(found.limits).toMatchObject([
    { limit: { quantity: 'valenceElectronConcentration', min: 6.5 }, passes: true, canFlip: true },
    { limit: { quantity: 'density', max: 20 }, passes: true, canFlip: false },
  ]);
  expect(found.criteria.zhang2008).toMatchObject({ passes: false, canFlip: false });
});

test('limits and conditions of a specification are asked, single ones beside them', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'weighing-'));
  try {
    const file = join(folder, 'limits.spec.json');
    const specification = {
      elements: { pool: ['Al', 'Ni'] },
      components: 2,
      fractions: { step: 5 },
      limits: [{ quantity: 'yieldStrengthBcc', min: 1 }],
      conditions: { serviceTemperature: 1100 },
      rank: [{ quantity: 'density', prefer: 'low' }],
    };
    await writeFile(file, JSON.stringify(specification));
    const words = ['weighing', 'AlNi', ...batch, '--max', 'density=20'];
    const { limits, quantities }: Weighed = await jsonOf([...words, '--limits', file]);
    expect(limits.map(({ limit }) => limit.quantity)).toEqual(['yieldStrengthBcc', 'density']);
    const cold: Weighed = await jsonOf(words);
    expect(quantities.homologousTemperature!.value).toBeGreaterThan(
      cold.quantities.homologousTemperature!.value!,
    );
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('for reading it fits into 80 characters and names what weighing can turn', async () => {
  const { out, code } = await tiegel([
    ...['weighing', 'AlCoCrFeMnNiTi', ...batch],
    ...['--max', 'density=20', '--min', 'density=19'],
  ]);
  expect(code).toBe(0);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/Limit density 19 to 20 g\/cm³: is not kept, however it is weighed\./);
  expect(out).toMatch(/Weighing alone, each mass off by at most one step of the balance/);
});

test('what cannot be weighed or read is refused with what would be right', async () => {
  const wrong = [
    [['AlNi', '--mass', '10'], 'command/usage', /--resolution/],
    [['AlNi', '--mass', '10', '--resolution', '0'], 'command/usage', /above 0 g/],
    [['AlNi', '--mass', '1', '--resolution', '1'], 'weighing/resolution', /Enlarge the batch/],
    [['AlBCCoCrCuFeMnMoNbNiTiV', ...batch], 'weighing/too-many-elements', /at most 12/],
    [['AlNi', ...batch, '--max', 'density'], 'command/usage', /as in density=8/],
    [['AlNi', ...batch, '--max', 'density=8,density=9'], 'command/usage', /stands there twice/],
    [['AlNi', ...batch, '--max', 'densty=8'], 'quantity/unknown', /did you mean "density"/],
    [['AlNi', ...batch, '--max', 'density=5', '--min', 'density=6'], 'specification/', /density/],
  ] as const;
  for (const [words, code, says] of wrong) {
    const ran = await tiegel(['weighing', ...words]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}`);
    expect(ran.error).toMatch(says);
  }
});
