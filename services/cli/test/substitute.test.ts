import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

test('an element is replaced by every other, whole and half, the most alike first', async () => {
  const { items } = await jsonOf(['substitute', 'CoCrFeMnNi', '--replace', 'Co']);
  expect(items.length).toBeGreaterThan(20);
  const scores = items.map(({ score }: { score: number }) => score);
  expect(scores).toEqual(scores.toSorted((a: number, b: number) => a - b));
  expect(new Set(items.map(({ replaced }: { replaced: object }) => JSON.stringify(replaced)))).toEqual(
    new Set(['{"Co":20}', '{"Co":10}']),
  );
  expect(items[0]).toMatchObject({ phase: { singleSolution: expect.any(Number) }, limits: [] });
});

// VEC by hand: CrFeMnNi2 (6 + 8 + 7 + 2·10)/5 = 8.2, CrFeMn2Ni (6 + 8 + 2·7 + 10)/5 = 7.6; before it is 8.
test('--with names the partners; limits and conditions are those of a specification', async () => {
  const input = JSON.stringify({
    elements: { pool: ['Cr', 'Fe', 'Mn', 'Ni'] },
    components: 4,
    fractions: { step: 5 },
    limits: [{ quantity: 'valenceElectronConcentration', min: 8 }],
    rank: [{ quantity: 'density', prefer: 'low' }],
    conditions: { serviceTemperature: 900 },
  });
  const words = ['substitute', 'CoCrFeMnNi', '--replace', 'Co', '--with', 'Ni, Mn', '--limits', '-'];
  const { items } = await jsonOf(words, { input });
  expect(items).toHaveLength(6);
  const by = (amounts: object) =>
    items.find((one: { by: object }) => JSON.stringify(one.by) === JSON.stringify(amounts));
  expect(by({ Ni: 20 })).toMatchObject({ limits: [true] });
  expect(by({ Ni: 20 }).changes.valenceElectronConcentration).toBeCloseTo(0.2, 9);
  expect(by({ Mn: 20 })).toMatchObject({ limits: [false] });
  const kept = items.map(({ limits }: { limits: boolean[] }) => limits[0]);
  expect(kept).toEqual(kept.toSorted((a: boolean, b: boolean) => Number(b) - Number(a)));
  const { meltingTemperature, homologousTemperature } = items[0].quantities;
  expect(homologousTemperature).toBeCloseTo(900 / meltingTemperature, 9);
});

test('what lies outside the space of the specification is marked, and told why', async () => {
  const input = JSON.stringify({
    elements: { pool: ['Cr', 'Cu', 'Fe', 'Mn', 'Ni'], forbid: ['Co'] },
    components: { min: 4, max: 5 },
    fractions: { step: 5, max: 35 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  });
  const words = ['substitute', 'CoCrFeMnNi', '--replace', 'Co', '--with', 'Ni, Cu', '--limits', '-'];
  const { items } = await jsonOf(words, { input });
  expect(items.map(({ outsideSpace }: { outsideSpace: string[] }) => outsideSpace.length > 0)).toEqual([
    ...[false, false, true, true, true, true],
  ]);
  const { out } = await tiegel(words, { input });
  expect(out).toContain('\n× Cr20 Fe20 Mn20 Ni40: Ni 40 at.%, at most 35\n');
  expect(out).toMatch(/\n× Co10 Cr20 Fe20 Mn20 Ni30 +0\./);
  expect(out).toMatch(/\nCr20 Cu20 Fe20 Mn20 Ni20 +0\./);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('for reading, substitutes fit into 80 characters', async () => {
  const { out } = await tiegel(['substitute', 'CoCrFeMnNi', '--replace', 'Co']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toContain('an explanation and no prediction of phases');
});

test('an element that the alloy does not hold, itself, and what is no element are refused', async () => {
  const wrong = [
    [['--replace', 'Ti'], 'substitute/absent'],
    [['--replace', 'Co', '--with', 'Ni,Co'], 'substitute/itself'],
    [['--replace', 'Xx'], 'element/unknown'],
    [['--replace', 'Co', '--with', ' , '], 'command/usage'],
    [[], 'command/usage'],
  ] as const;
  for (const [options, code] of wrong) {
    const ran = await tiegel(['substitute', 'CoCrFeMnNi', ...options]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}]`);
  }
});
