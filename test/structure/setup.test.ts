import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tiegel-setup-'));
  for (const file of ['scripts/setup.mjs', 'scripts/ownNode.cjs', 'services/cli/src/built.mjs']) {
    mkdirSync(join(folder, dirname(file)), { recursive: true });
    cpSync(join(root, file), join(folder, file));
  }
  writeFileSync(join(folder, 'package-lock.json'), '{}');
  const optionalDependencies = { 'node-this-system': '1.0.0', 'node-other-system': '1.0.0' };
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ optionalDependencies }));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Stands in for npm: writes down what it was asked for, and does after `ci` what is given. */
function setUp(afterCi: string): { asked: string[][]; status: number | null } {
  const program = join(folder, 'npm.js');
  const log = join(folder, 'asked.json');
  writeFileSync(
    program,
    `const fs = require('node:fs');
     const words = process.argv.slice(2).filter((word) => word !== '--loglevel=error');
     const before = fs.existsSync(${JSON.stringify(log)}) ? JSON.parse(fs.readFileSync(${JSON.stringify(log)})) : [];
     fs.writeFileSync(${JSON.stringify(log)}, JSON.stringify([...before, [process.version, ...words]]));
     const bin = 'node_modules/.bin';
     fs.mkdirSync(bin, { recursive: true });
     fs.mkdirSync('node_modules/node-this-system/bin', { recursive: true });
     const link = () => fs.writeFileSync(bin + '/node', '');
     if (words[0] === 'ci') { ${afterCi} } else link();`,
  );
  const env = { ...process.env, npm_execpath: program, SKIP_SETUP: '' };
  const { status } = spawnSync(process.execPath, ['scripts/setup.mjs'], { cwd: folder, env });
  return { asked: JSON.parse(readFileSync(log, 'utf8')), status };
}

test('the Node of the project is linked where npm ci left it without a link, as npm 9 and 10 do', () => {
  const { asked, status } = setUp('');

  expect(status).toBe(0);
  expect(asked.map(([, what]) => what)).toEqual(['ci', 'rebuild']);
  expect(asked[1]).toEqual(['v1.0.0', 'rebuild', '--ignore-scripts', 'node-this-system']);
  expect(existsSync(join(folder, 'node_modules/.bin/node'))).toBe(true);
});

test('npm takes the packages that run on the Node of the project, whichever one it runs on itself', () => {
  expect(setUp('link();').asked.map(([version]) => version)).toEqual(['v1.0.0']);
});

test('a link that is there is left alone, and the second start asks npm for nothing', () => {
  expect(setUp('link();').asked.map(([, what]) => what)).toEqual(['ci']);
  expect(setUp('link();').asked.map(([, what]) => what)).toEqual(['ci']);
});

test('an install that fails ends the setup with its exit code, and is tried again', () => {
  expect(setUp('process.exit(7);').status).toBe(7);
  expect(setUp('link();')).toEqual({ status: 0, asked: [expect.anything(), expect.arrayContaining(['ci'])] });
});
