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
const ownNode = join(root, 'scripts', 'ownNode.cjs');
const stamp = join(root, 'node_modules', '.setup-stamp');
const want = createHash('sha256')
  .update(readFileSync(join(root, 'package-lock.json')))
  .update(process.platform + process.arch)
  .digest('hex');
const have = existsSync(stamp) ? readFileSync(stamp, 'utf8') : '';

const skip = process.env.SKIP_SETUP === '1';

if (have !== want && !skip) {
  console.error('[setup] installing dependencies (npm ci) ...');
  npm(['ci', '--no-audit', '--no-fund', '--ignore-scripts']);
  writeFileSync(stamp, want);
}
if (!skip) linkNode();

if (process.argv.includes('--terminal') && !skip && builtFolder() === null) {
  // Of npm's path: the project's Node, whatever this one is. Without it the program is read from its sources.
  spawnSync('node', ['scripts/buildTerminal.ts'], {
    ...{ cwd: root, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' },
  });
}

/** Runs npm; ends with its exit code where it fails. */
function npm(words) {
  const program = process.env.npm_execpath;
  const all = [...words, '--loglevel=error'];
  const options = {
    cwd: root,
    // npm's own words go to stderr, so that the first `tiegel ... --json` after a clone prints JSON alone.
    stdio: ['inherit', 2, 2],
    env: { ...process.env, NODE_OPTIONS: `${process.env.NODE_OPTIONS ?? ''} --require=${quoted(ownNode)}` },
  };
  // npm_node_execpath is the machine's Node: npm ci deletes the one inside node_modules.
  const run = program?.endsWith('.js')
    ? spawnSync(process.env.npm_node_execpath ?? process.execPath, [program, ...all], options)
    : spawnSync('npm', all, { ...options, shell: process.platform === 'win32' });
  if (run.status !== 0) process.exit(run.status ?? 1);
}

/** As NODE_OPTIONS takes it: in quotes, in which a backslash stands for the next letter. */
function quoted(path) {
  return `"${path.replaceAll('\\', '\\\\')}"`;
}

/**
 * npm before 11 links the program of the project's Node, then takes the link away with the packages for
 * other systems, which have a program of that name, too. Linked once more, it stays.
 */
function linkNode() {
  const modules = join(root, 'node_modules');
  if (existsSync(join(modules, '.bin', 'node'))) return;
  const { optionalDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const there = Object.keys(optionalDependencies).filter((name) => existsSync(join(modules, name, 'bin')));
  if (there.length > 0) npm(['rebuild', '--ignore-scripts', ...there]);
}
