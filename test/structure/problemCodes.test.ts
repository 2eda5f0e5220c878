import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fault, type ProblemCode, problems } from '@tiegel/contract';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const table = 'packages/contract/src/problem/table/';
const codes = Object.keys(problems);

/** Every code that files name as a text of its own, with the files that do. */
function named(pattern: string): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const file of globSync(pattern, { cwd: root })) {
    if (file.startsWith(table) || file.includes('node_modules')) continue;
    const text = readFileSync(join(root, file), 'utf8');
    for (const [, code] of text.matchAll(/['"`]([a-z]+\/[a-z-]+)['"`\s]/g)) {
      found.set(code!, [...(found.get(code!) ?? []), file]);
    }
  }
  return found;
}

test('every code stands in the table once: of two the later one would take the place of the other', () => {
  const written = globSync(`${table}*.ts`, { cwd: root }).flatMap((file) =>
    [...readFileSync(join(root, file), 'utf8').matchAll(/^ {2}'([a-z]+\/[a-z-]+)': \{$/gm)].map(
      ([, code]) => code,
    ),
  );
  expect(written.toSorted()).toEqual(codes.toSorted());
});

test('every code of the table is thrown somewhere', () => {
  const inSource = named('{packages,services}/*/src/**/*.{ts,tsx}');
  expect(inSource.size).toBeGreaterThan(20);
  expect(codes.filter((code) => !inSource.has(code))).toEqual([]);
});

test('every code that the source throws is in the table', () => {
  const thrown: string[] = [];
  for (const file of globSync('{packages,services,scripts}/**/*.{ts,tsx}', { cwd: root })) {
    if (file.includes('node_modules') || file.includes('/test/')) continue;
    const text = readFileSync(join(root, file), 'utf8');
    for (const [, code] of text.matchAll(/\b(?:fault|problem|report)\(\s*(?:\w+,\s*)?'([^']+)'/g))
      thrown.push(code!);
  }
  expect(thrown.length).toBeGreaterThan(20);
  expect(thrown.filter((code) => !codes.includes(code))).toEqual([]);
});

test('every code is provoked by a test', () => {
  const tests = globSync('{packages,services,test}/**/*.{test.ts,test.tsx,expected.json}', { cwd: root })
    .filter((file) => !file.includes('node_modules') && !file.endsWith(import.meta.filename))
    .map((file) => readFileSync(join(root, file), 'utf8'))
    .join('\n');
  expect(codes.filter((code) => !tests.includes(code))).toEqual([]);
});

test('who asks at the terminal is told a command where a program is told a route', () => {
  const asked: ProblemCode[] = [
    ...(['charge/not-found', 'import/unknown', 'melt/not-found', 'search/unknown'] as const),
    ...(['shortlist/unknown', 'quantity/unknown', 'expression/unknown-name'] as const),
  ];
  const commands = globSync('services/cli/src/commands/*.ts', { cwd: root })
    .map((file) => readFileSync(join(root, file), 'utf8'))
    .join('\n');
  for (const code of asked) {
    const { remedy } = fault(code);
    const [, command] = /"([\w-]+(?: [a-z]+)?)\b[^"]*" and GET \/api\/v1/.exec(remedy) ?? [code];
    for (const word of command!.split(' ')) expect(commands).toContain(`'${word}'`);
  }
});

test('what becomes of a search that has no candidates hangs on its state', () => {
  const remedyOf = (state: string) => fault('search/not-finished', { state }).remedy;
  expect(remedyOf('cancelled')).toMatch(/^Start .* anew/);
  for (const state of ['paused', 'failed']) expect(remedyOf(state)).toMatch(/^Resume it.*"searches resume"/);
  for (const state of ['waiting', 'running'])
    expect(remedyOf(state)).toMatch(/^Wait until the search is done/);
});

test('every remedy that needs no values is a whole sentence', () => {
  const remedies = Object.values(problems).flatMap(({ remedy }) =>
    typeof remedy === 'string' ? [remedy] : [],
  );
  expect(remedies.length).toBeGreaterThan(20);
  for (const remedy of remedies) expect(remedy).toMatch(/^[A-Z"].*\.$/s);
});
