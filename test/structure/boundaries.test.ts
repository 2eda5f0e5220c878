import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const check = (...folder: string[]) =>
  spawnSync(process.execPath, ['scripts/boundaries.ts', ...folder], { cwd: root, encoding: 'utf8' });

test('the project keeps its walls, and more than a few modules were seen', () => {
  const run = check();
  expect(run.stderr).toMatch(/boundaries: \d{3,} modules, 0 faults/);
  expect(run.status).toBe(0);
});

test('each kind of breach is seen in a project made to breach', () => {
  const run = check('test/fixtures/wrong-import');
  expect(run.status).toBe(1);
  expect(run.stderr).toContain('engine/src/index.ts:1: may not import @tiegel/store');
  expect(run.stderr).toContain('engine/src/index.ts:2: imports the Node built-in node:fs');
  expect(run.stderr).toContain('engine/src/index.ts:3: reaches out of packages/engine');
  expect(run.stderr).toMatch(
    /circle: .*one\.ts -> .*two\.ts -> .*one\.ts|circle: .*two\.ts -> .*one\.ts -> .*two\.ts/,
  );
});

test('an empty folder is not taken for a clean one', () => {
  const run = check('test/fixtures/wrong-import/packages/store');
  expect(run.status).toBe(1);
  expect(run.stderr).toContain('nothing was checked');
});
