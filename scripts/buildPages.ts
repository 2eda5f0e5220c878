import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const web = join(root, 'services/web');
const stamp = join(web, 'dist/.built-from');

/** What the pages are made of: their own files and those of the packages that they import. */
function sourcesDigest(): string {
  const { dependencies } = JSON.parse(readFileSync(join(web, 'package.json'), 'utf8'));
  const packages = Object.keys(dependencies).filter((name) => name.startsWith('@tiegel/'));
  const patterns = [
    'package-lock.json',
    'services/web/{package.json,tsconfig.json,vite.config.ts,index.html}',
    'services/web/{src,public}/**/*',
    ...packages.map((name) => `packages/${name.slice('@tiegel/'.length)}/src/**/*`),
  ];
  const hash = createHash('sha256');
  const files = globSync(patterns, { cwd: root, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const path of files.map(({ parentPath, name }) => join(parentPath, name)).sort()) {
    hash.update(path.slice(root.length)).update('\0').update(readFileSync(path)).update('\0');
  }
  return hash.digest('hex');
}

/**
 * Builds the pages where their sources have changed since, in a process of its own, so that the
 * bundler's memory does not stay with the server. Throws where that fails.
 */
export function buildPages(): void {
  const digest = sourcesDigest();
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === digest) return;
  console.error('[pages] building ...');
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const build = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
    cwd: web,
    // A test runner sets NODE_ENV to test, and React would come in its slow, large form.
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: ['ignore', 2, 2],
  });
  if (build.status !== 0) throw new Error('The pages could not be built; what went wrong stands above.');
  writeFileSync(stamp, digest);
}
