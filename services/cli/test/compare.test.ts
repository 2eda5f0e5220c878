import { join } from 'node:path';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

interface Row {
  id: string;
  unit: string;
  difference: string | null;
  values: (number | null)[];
  texts: string[];
  met?: (boolean | null)[];
}

interface Told {
  alloys: { quantities: Record<string, number | null>; rank?: number | null }[];
  groups: { head: string; rows: Row[] }[];
}

const rowsOf = ({ groups }: Told) =>
  Object.fromEntries(groups.flatMap(({ rows }) => rows.map((row) => [row.id, row])));
const widest = (out: string) => Math.max(...out.split('\n').map((line) => line.length));

test('alloys stand side by side with the lines of the page, within 80 characters', async () => {
  const { code, out, error } = await tiegel(['compare', 'AlCoCrFeNi', 'Co20 Cr20 Fe20 Mn20 Ni20', 'NbMoTaW']);
  expect({ code, error }).toEqual({ code: 0, error: '' });
  expect(widest(out)).toBeLessThanOrEqual(80);
  expect(out).toMatch(/^2: Co20 Cr20 Fe20 Mn20 Ni20 at\.%$/m);
  for (const head of ['Composition, at.%', 'Phases', 'What competes', 'Quantities'])
    expect(out).toMatch(new RegExp(`^${head}$`, 'm'));
  // Values as those of screen; the sign before the name and the mark behind the number need no colour.
  expect(out).toMatch(/^≠ +Mixing enthalpy +kJ\/mol +-12\.32▼ +-4\.16▲ +-6\.50$/m);
  expect(out).toMatch(/^≠ +Guo et al\. 2013 \(right: 0\.54\) +× not met +✓ met +✓ met$/m);
  expect(out).toMatch(/^= +Guo & Liu 2011 \(right: 0\.53\)/m);
  expect(out).toContain('\n=   Basis of the estimate\n    all: near enough\n');
  expect(out).toContain('▲\u00a0highest');
});

test('four alloys still fit; names are broken, not cut', async () => {
  const { out } = await tiegel(['compare', 'AlCoCrFeNi', 'CoCrFeMnNi', 'NbMoTaW', 'CoCrFeNi']);
  expect(widest(out)).toBeLessThanOrEqual(80);
  expect(out).toMatch(/Electronegativity spread .*\n +\(Allen, relative\)\n/);
});

test('as JSON come the alloys as screen tells them, and each line with how much it differs', async () => {
  const words = ['CoCrFeMnNi', 'NbMoTaW', '--service-temperature', '1273'];
  const told: Told = await jsonOf(['compare', ...words]);
  const screened: Told['alloys'] = await jsonOf(['screen', ...words]);
  expect(told.alloys.map(({ quantities }) => quantities)).toEqual(
    screened.map(({ quantities }) => quantities),
  );
  const { density, cost, 'share-Co': cobalt, basis } = rowsOf(told);
  expect(density).toMatchObject({ unit: 'g/cm³', difference: 'much' });
  expect(density!.values).toEqual(screened.map(({ quantities }) => quantities.density));
  // No published alloy has a price: nobody can say by how much.
  expect(cost!.difference).toBeNull();
  expect(cobalt).toMatchObject({ values: [20, 0], texts: ['20', '–'], difference: 'unlike' });
  expect(basis).toMatchObject({ values: [null, null], difference: 'none' });
  expect(told).toMatchObject({ conditions: { serviceTemperature: 1273, grainSize: null } });
});

test('--differs leaves out what is alike or differs little, and marks that nothing bears', async () => {
  const words = ['compare', 'CoNi', 'FeNi'];
  const all: Told = await jsonOf(words);
  const some: Told = await jsonOf([...words, '--differs']);
  const kept = Object.values(rowsOf(all)).filter(
    ({ difference }) => difference !== 'none' && difference !== 'little',
  );
  expect(Object.values(rowsOf(some))).toEqual(kept);
  expect(kept.length).toBeLessThan(Object.keys(rowsOf(all)).length);
  const { out } = await tiegel([...words, '--differs']);
  expect(out).toContain('Density');
  expect(out).not.toMatch(/Configurational entropy|No basis/);
  expect((await tiegel(words)).out).toContain('* No basis for the estimate');
});

test('an estimate without a basis is no number that could differ', async () => {
  const { singlePhaseEstimate } = rowsOf(await jsonOf(['compare', 'CuFe', 'AlNi']));
  expect(singlePhaseEstimate).toMatchObject({ values: [null, null], difference: 'none' });
});

test('the estimate is told once, by one name, and a file keeps both of its lines', async () => {
  const { out } = await tiegel(['compare', 'CoCrFeNi', 'AlNi']);
  expect(out.match(/^.*(?:one solid solution|uniform phase).*$/gim)).toHaveLength(1);
  expect(Object.keys(rowsOf(await jsonOf(['compare', 'CoCrFeNi', 'AlNi'])))).toEqual(
    expect.arrayContaining(['one-phase', 'singlePhaseEstimate']),
  );
});

// Estimates of 0.86 and 0.79: little on the scale of the quantity, some on that of the line of phases.
test('whether the estimate differs is decided by the line that people see, in a file by each', async () => {
  const words = ['compare', 'CoFeNi', 'CrFeNi', '--differs'];
  expect((await tiegel(words)).out).not.toMatch(/one solid solution|uniform phase/i);
  const rows = rowsOf(await jsonOf(words));
  expect(rows['one-phase']).toMatchObject({ difference: 'some' });
  expect(rows).not.toHaveProperty('singlePhaseEstimate');
});

test('alloys of one’s own count where a database is named', async () => {
  const folder = await temporaryFolder('compare');
  onTestFinished(() => folder.remove());
  const where = ['--database', join(folder.path, 'lab.sqlite')];
  const input = 'composition,name,phases,process,doi,note\nCoCrFeNi,trial 1,FCC,cast,,invented\n';
  await jsonOf(['data', 'import', 'alloys', '-', ...where], { input });
  const { published } = rowsOf(await jsonOf(['compare', 'CoCrFeNi', 'NbMoTaW', ...where]));
  expect(published!.texts[0]).toContain('yours: FCC');
});

describe('with a search', () => {
  const specification = {
    version: 1,
    name: 'Stiff and light',
    elements: { pool: ['Al', 'Cr', 'Fe', 'Mn', 'Ti', 'V'] },
    components: 5,
    fractions: { step: 5, min: 5, max: 35 },
    limits: [
      { quantity: 'density', max: 6 },
      { quantity: 'merit', min: 30 },
    ],
    lets: { merit: 'youngsModulus / density' },
    keptOnly: [{ quantity: 'hullDistance', max: 15 }],
    conditions: { serviceTemperature: 900 },
    rank: [{ quantity: 'merit', prefer: 'high' }],
    keep: 100,
  };
  let where: string[];
  let id: string;
  let best: { composition: Record<string, number>; quantities: Record<string, number> };
  beforeAll(async () => {
    const folder = await temporaryFolder('compare-search');
    where = ['--database', join(folder.path, 'lab.sqlite')];
    const found = await jsonOf(['search', '-', ...where], { input: JSON.stringify(specification) });
    [best] = found.candidates;
    [{ id }] = await jsonOf(['results', 'list', ...where]);
    return folder.remove;
  });

  test('stand its limits, expressions and conditions, and candidates by rank beside any alloy', async () => {
    const words = ['compare', 'CoCrFeNi', '--search', id, '--ranks', '1,2', ...where];
    const told: Told = await jsonOf(words);
    expect(told.alloys.map(({ rank }) => rank)).toEqual([1, 2, null]);
    expect(told.alloys[0]).toMatchObject({ composition: best.composition, quantities: best.quantities });
    expect(told).toMatchObject({ search: { id, asStored: true }, conditions: { serviceTemperature: 900 } });
    const rows = rowsOf(told);
    expect(rows['limit-0']).toMatchObject({ name: 'Density ≤ 6 g/cm³', met: [true, true, false] });
    // Late quantities are known of what was kept alone.
    expect(rows['kept-0']!.met).toEqual([true, true, null]);
    expect(rows['expression-merit']!.values[0]).toBe(best.quantities.merit);
    expect(rows['expression-merit']!.values[2]).toBeGreaterThan(0);
    const { out } = await tiegel(words);
    expect(widest(out)).toBeLessThanOrEqual(80);
    expect(out).toMatch(/^1: .* at\.%, rank 1$/m);
    expect(out).toMatch(/^≠≠ +Density ≤ 6 g\/cm³ +✓ \d\.\d\d▼? +✓ \d\.\d\d▼? +× 8\.16▲$/m);
    expect(out).toContain('Stiff and light: of its limits ✓ met');
  });

  test('a kept alloy is found by its composition; under other conditions all is computed anew', async () => {
    const alloy = Object.entries(best.composition).flat().join('');
    const words = ['compare', alloy, 'AlCrFeTiV', '--search', id, ...where];
    expect((await jsonOf(words)).alloys[0].rank).toBe(1);
    const other: Told = await jsonOf([...words, '--service-temperature', '300']);
    expect(other).toMatchObject({ search: { asStored: false } });
    expect(rowsOf(other)['kept-0']!.met).toBeUndefined();
    expect((await tiegel([...words, '--service-temperature', '300'])).out).toContain('computed anew');
  });

  test.each([
    [['CoNi', '--ranks', '1'], '--ranks needs --search'],
    [['CoNi', '--search', 'none', ...['--ranks', '1']], 'There is no search "none"'],
    [['CoNi', '--search', 'ID', '--ranks', '5000'], 'No candidate has the rank 5000'],
    [['CoNi', '--search', 'ID', '--ranks', 'first'], 'Write ranks with commas between'],
    [['--search', 'ID', '--ranks', '1,1'], 'are the same alloy'],
    [['--search', 'ID', '--ranks', '1'], '2 to 6 alloys, not 1'],
  ])('%j is refused: %s', async (words, text) => {
    const ran = await tiegel(['compare', ...words.map((word) => (word === 'ID' ? id : word)), ...where]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(text);
  });
});

test('one alloy, seven, the same one twice and what is no alloy are refused by name', async () => {
  const seven = ['Ni', 'Co', 'Fe', 'Cr', 'Mn', 'Al', 'Ti'];
  const wrong = [
    [[], 'command/nothing-to-screen', 'No alloy'],
    [['CoNi'], 'command/usage', '2 to 6 alloys, not 1'],
    [seven, 'command/usage', '2 to 6 alloys, not 7'],
    [['CoNi', 'Fe', 'Ni50Co50'], 'command/usage', 'Alloy 1, "CoNi", and Alloy 3, "Ni50Co50"'],
    [['NiNi', 'CoNi'], 'alloy/repeated-element', 'Alloy 1, "NiNi"'],
    [['CoNi', 'XxNi'], 'element/unknown', 'Alloy 2, "XxNi"'],
  ] as const;
  for (const [alloys, code, text] of wrong) {
    const ran = await tiegel(['compare', ...alloys]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}]`);
    expect(ran.error).toContain(text);
  }
});
