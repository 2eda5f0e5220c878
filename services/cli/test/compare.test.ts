import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

interface Row {
  id: string;
  unit: string;
  difference: string | null;
  values: (number | null)[];
  texts: string[];
}

interface Told {
  alloys: { quantities: Record<string, number | null> }[];
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

test('alloys of one’s own count where a database is named', async () => {
  const folder = await temporaryFolder('compare');
  onTestFinished(() => folder.remove());
  const where = ['--database', join(folder.path, 'lab.sqlite')];
  const input = 'composition,name,phases,process,doi,note\nCoCrFeNi,trial 1,FCC,cast,,invented\n';
  await jsonOf(['data', 'import', 'alloys', '-', ...where], { input });
  const { published } = rowsOf(await jsonOf(['compare', 'CoCrFeNi', 'NbMoTaW', ...where]));
  expect(published!.texts[0]).toContain('yours: FCC');
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
