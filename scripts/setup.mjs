// Plain JavaScript: it runs on whatever Node the machine has, installs the locked
// dependencies (a Node for the project among them) and does nothing when they are in place.
// With --terminal it also makes the terminal's program of its sources, where they changed since.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { builtFolder } from '../services/cli/src/built.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const stamp = join(root, 'node_modules', '.setup-stamp');
const want = createHash('sha256')
  .update(readFileSync(join(root, 'package-lock.json')))
  .update(process.platform + process.arch)
  .digest('hex');
const have = existsSync(stamp) ? readFileSync(stamp, 'utf8') : '';

if (have !== want && process.env.SKIP_SETUP !== '1') {
  console.error('[setup] installing dependencies (npm ci) ...');
  const npm = process.env.npm_execpath;
  const words = ['ci', '--no-audit', '--no-fund', '--ignore-scripts', '--loglevel=error'];
  // npm's own words go to stderr, so that the first `tiegel ... --json` after a clone prints JSON alone.
  const stdio = ['inherit', 2, 2];
  // npm_node_execpath is the machine's Node: npm ci deletes the one inside node_modules.
  const run = npm?.endsWith('.js')
    ? spawnSync(process.env.npm_node_execpath ?? process.execPath, [npm, ...words], { cwd: root, stdio })
    : spawnSync('npm', words, { cwd: root, stdio, shell: process.platform === 'win32' });
  if (run.status !== 0) process.exit(run.status ?? 1);
  writeFileSync(stamp, want);
}

if (process.argv.includes('--terminal') && process.env.SKIP_SETUP !== '1' && builtFolder() === null) {
  // Of npm's path: the project's Node, whatever this one is. Without it the program is read from its sources.
  spawnSync('node', ['scripts/buildTerminal.ts'], {
    ...{ cwd: root, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' },
  });
}
