import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { builtFolder } from '../src/built.mjs';

const root = join(import.meta.dirname, '../../..');

/** What a program writes for some words; `file` exports run. */
function written(file: string, words: readonly string[]): string {
  const program = `const { run } = await import(${JSON.stringify(pathToFileURL(file).href)});
    process.exitCode = await run(${JSON.stringify(words)});`;
  const told = execFileSync(process.execPath, ['--input-type=module', '--eval', program], {
    ...{ cwd: root, encoding: 'utf8', maxBuffer: 2 ** 26 },
  });
  return told.replace(/"(seconds|preparationSeconds|storingSeconds)":[\d.e-]+/g, '"$1":0');
}

test('the built program writes what the sources write', () => {
  execFileSync(process.execPath, ['scripts/buildTerminal.ts'], { cwd: root });
  const built = builtFolder();
  expect(built).not.toBeNull();
  for (const words of [
    ['--help'],
    ['screen', 'CoCrFeMnNi', '--json'],
    ['evidence', '--json'],
    ['search', 'packages/search/demonstration.spec.json', '--json', '--workers', '1'],
  ]) {
    const fromSources = written(join(root, 'services/cli/src/run.ts'), words);
    expect(fromSources.length).toBeGreaterThan(500);
    expect(written(join(built!, 'run.js'), words)).toBe(fromSources);
  }
});

test('a program that one user built is run by every other', () => {
  execFileSync(process.execPath, ['scripts/buildTerminal.ts'], { cwd: root });
  // Read and entered by everybody, as the sources are.
  expect(statSync(builtFolder()!).mode & 0o777).toBe(0o755);
});

test('what Node makes of a built program is kept in its folder, and goes with it', () => {
  const command = ['services/cli/src/main.mjs', 'screen', 'CoCrFeNi'];
  const build = () => {
    execFileSync(process.execPath, ['scripts/buildTerminal.ts'], { cwd: root });
    execFileSync(process.execPath, command, { cwd: root });
    return builtFolder()!;
  };
  const first = build();
  expect(readdirSync(join(first, 'compiled'))).not.toEqual([]);
  build();
  build();
  expect(existsSync(first)).toBe(false);
});

test('what was made of other sources is not run', async () => {
  const folder = await temporaryFolder('built');
  onTestFinished(folder.remove);
  const source = join(folder.path, 'source.ts');
  writeFileSync(source, 'one');
  const { size, mtimeMs } = statSync(source);
  const told = (madeOf: unknown) =>
    writeFileSync(join(folder.path, 'built.json'), JSON.stringify({ folder: 'program', madeOf }));

  expect(builtFolder(folder.path)).toBeNull();
  told([[relative(root, source), size, mtimeMs]]);
  expect(builtFolder(folder.path)).toBe(join(folder.path, 'program'));

  writeFileSync(source, 'longer');
  expect(builtFolder(folder.path)).toBeNull();
  writeFileSync(source, 'two');
  utimesSync(source, new Date(), new Date(mtimeMs + 1000));
  expect(builtFolder(folder.path)).toBeNull();
  told([[relative(root, join(folder.path, 'gone.ts')), 1, 1]]);
  expect(builtFolder(folder.path)).toBeNull();
  writeFileSync(join(folder.path, 'built.json'), '{');
  expect(builtFolder(folder.path)).toBeNull();
});
