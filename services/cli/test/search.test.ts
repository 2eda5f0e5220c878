import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { quantities as all } from '@tiegel/screening';
import { afterAll, expect, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';
import { until } from '../../../test/fixtures/until.ts';
import { malformedFixtures } from '../../../test/flows/malformedFixtures.ts';

const ids = all.map(({ id }) => id);
const folder = await temporaryFolder('cli');
afterAll(folder.remove);

const impeller = fileURLToPath(
  new URL('../../../test/fixtures/searches/impeller-bounds-each-system.spec.json', import.meta.url),
);
const small = JSON.stringify({
  elements: { pool: ['Co', 'Cr', 'Fe', 'Ni'] },
  components: 3,
  fractions: { step: 10 },
  limits: [{ quantity: 'density', min: 7.8 }],
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  keep: 10,
});

test('count says how many systems and points, and nothing else, as JSON', async () => {
  // C(4, 3) systems of C(9, 2) compositions in tenths each.
  expect(await jsonOf(['count', '-'], { input: small })).toEqual({ systems: 4, points: 144 });
});

test('count for reading names the question and a time, and what a sample says that each limit leaves', async () => {
  const { out } = await tiegel(['count', impeller]);
  expect(out).toMatch(/Of 2,000 points drawn at random each limit is met by\n {2}\w+ [≥≤] .*: \d+\.\d %/);
  expect(out).toMatch(/all together: \d+\.\d+ % ± \d+\.\d+ %/);
  expect(out.replaceAll('\n', ' ')).toMatch(
    /^five or six of Al Cr Cu Fe Mn Mo Ni Ti V, with Cr Fe Ni, 5–35 at\.% in steps of 5/,
  );
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/35 systems, 38,494 points, about .* to search/);
});

test('search answers with counts, candidates, seconds and versions', async () => {
  const found = await jsonOf(['search', '-', '--workers', '1'], { input: small });
  expect(Object.keys(found)).toEqual([
    ...[
      'counts',
      'candidates',
      'seconds',
      'preparationSeconds',
      'storingSeconds',
      'dataVersion',
      'engineVersion',
    ],
  ]);
  expect(found.counts).toMatchObject({
    systems: 4,
    points: 144,
    passedEach: [found.counts.passed],
    outside: {},
  });
  expect(found.candidates).toHaveLength(10);
  expect(found.candidates.map(({ rank }: { rank: number }) => rank)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  for (const { composition, quantities, score } of found.candidates) {
    const total = Object.values<number>(composition).reduce((sum, share) => sum + share, 0);
    expect(total).toBeCloseTo(100, 9);
    expect(quantities.sizeMismatch).toBe(score);
    expect(Object.keys(quantities)).toEqual(ids);
  }
  for (const seconds of [found.seconds, found.preparationSeconds, found.storingSeconds]) {
    expect(seconds).toBeGreaterThanOrEqual(0);
  }
});

test('a search that keeps nothing is JSON, too', async () => {
  const input = JSON.stringify({ ...JSON.parse(small), keep: 0 });
  expect((await jsonOf(['search', '-'], { input })).candidates).toEqual([]);
});

test('for reading, the question, what each limit leaves, and the best within 80 characters', async () => {
  const { code, out } = await tiegel(['search', impeller]);
  expect(code).toBe(0);
  expect(out).toMatch(/35 systems, 38,494 points, [\d,]+ meet every limit/);
  expect(out).toMatch(/density ≤ 8: 37,226 pass/);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/\n20 of [\d,]+ kept/);
});

test('invented prices are told of where candidates are kept or a price is asked for, not where neither is', async () => {
  const told = async (change: object) =>
    (await tiegel(['search', '-'], { input: JSON.stringify({ ...JSON.parse(small), ...change }) })).out;
  expect(await told({})).toContain('invented for demonstration');
  expect(await told({ keep: 0 })).not.toContain('invented');
  const limits = [{ quantity: 'cost', max: 100 }];
  expect(await told({ keep: 0, limits })).toContain('invented for demonstration');
});

test('a database keeps the search', async () => {
  const database = join(folder.path, 'kept', 'searches.sqlite');
  const first = await jsonOf(['search', '-', '--database', database], { input: small });
  const second = await jsonOf(['search', '-', '--database', database], { input: small });
  expect(second.candidates).toEqual(first.candidates);
});

test('bounds that are rounded are told on standard error', async () => {
  const input = JSON.stringify({ ...JSON.parse(small), fractions: { step: 10, max: 45 } });
  const { code, out, error } = await tiegel(['search', '-', '--json'], { input });
  expect(code).toBe(0);
  expect(error).toContain('max 45 at.% is rounded inwards to 40 at.%');
  expect(JSON.parse(out).counts.systems).toBe(4);
});

test('a wrong specification is answered with every fault and its place, by count and search alike', async () => {
  const { text, faults } = malformedFixtures('specification').find(({ name }) => name === 'many-at-once')!;
  for (const command of ['count', 'search']) {
    const { code, out, error } = await tiegel([command, '-', '--json'], { input: text });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    for (const { pointer } of faults) expect(error).toContain(`${pointer}: `);
    expect(error).not.toMatch(/\n {4}at /);
  }
});

test('a search needs a specification or an export, not both and not neither', async () => {
  for (const words of [['search'], ['search', impeller, '--again', impeller]]) {
    const { code, error } = await tiegel(words);
    expect(code).toBe(1);
    expect(error).toMatch(/either a specification or --again/);
  }
});

test('a database that is none is refused in words', async () => {
  const foreign = join(folder.path, 'foreign.sqlite');
  writeFileSync(foreign, 'this is no database, however long it may be'.repeat(100));
  const { code, error } = await tiegel(['search', '-', '--database', foreign], { input: small });
  expect(code).toBeGreaterThan(0);
  expect(error).toContain(foreign);
  expect(error).not.toMatch(/\n {4}at /);
});

test('a search that is broken off leaves no temporary database behind, nor does a reader that has enough', async () => {
  const large = JSON.stringify({
    elements: { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'V', 'Ti'] },
    components: 6,
    fractions: { step: 1 },
    rank: [{ quantity: 'omega', prefer: 'high' }],
  });
  const place = join(folder.path, 'temporary');
  mkdirSync(place);
  const environment = { TMPDIR: place };
  const ending = new AbortController();
  const brokenOff = tiegel(['search', '-'], { input: large, environment, signal: ending.signal });
  await until('the search has its database', () => readdirSync(place).length > 0);
  ending.abort();
  expect((await brokenOff).code).toBe(128 + 15);
  const few = { ...JSON.parse(small), fractions: { step: 1 }, limits: [], keep: 100_000 };
  const read = await tiegel(['search', '-', '--json'], {
    input: JSON.stringify(few),
    environment,
    readOnly: 10,
  });
  expect(read.code).toBe(0);
  expect(readdirSync(place)).toEqual([]);
});

test('a search with a front answers with its members, which the candidates mark', async () => {
  const front = [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'sizeMismatch', prefer: 'high' },
  ];
  const input = JSON.stringify({ ...JSON.parse(small), keep: 3, front });
  const found = await jsonOf(['search', '-', '--workers', '1'], { input });
  expect(found.front.length).toBeGreaterThan(1);
  expect(found.front).toEqual(found.candidates.filter((one: { front: boolean }) => one.front));
  // Along a front of two quantities whoever gains in the one loses in the other.
  const byDensity = found.front.toSorted(
    (one: Quantities, other: Quantities) => one.quantities.density - other.quantities.density,
  );
  const mismatches = byDensity.map(({ quantities }: Quantities) => quantities.sizeMismatch);
  expect(mismatches).toEqual(mismatches.toSorted((one: number, other: number) => one - other));
});

interface Quantities {
  quantities: { density: number; sizeMismatch: number };
}
