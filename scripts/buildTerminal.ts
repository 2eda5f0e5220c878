/**
 * Makes the terminal's program a few files instead of a thousand: it starts in two thirds of the time.
 * `services/cli/src/main.mjs` runs it as long as nothing that it was made of has changed, else the sources.
 *
 * Usage: npx node scripts/buildTerminal.ts
 */
import {
  chmodSync,
  cpSync,
  globSync,
  mkdirSync,
  mkdtempSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, join, relative, sep } from 'node:path';
import { type Plugin, rolldown } from 'rolldown';
import { builtInto } from '../services/cli/src/built.mjs';

const root = join(import.meta.dirname, '..');

const entries = {
  keepHeapSmall: 'packages/search/src/working/keepHeapSmall.ts',
  run: 'services/cli/src/run.ts',
  scoringThread: 'packages/search/src/working/scoringThread.ts',
};
/** They find files of their own beside them, or are loaded by few commands. */
const leftOutside = [/^better-sqlite3/, /^piscina/, /^bullmq/, /^ioredis/];
/** Read from the disk by packages/store, beside the file that reads them. */
const migrations = 'packages/store/src/migrations';

const besideTheOthers: Plugin = {
  name: 'thread-file',
  load: (id) =>
    id.endsWith(join('searching', 'threadFile.ts'))
      ? "export const threadFile = new URL('./scoringThread.js', import.meta.url);"
      : null,
};

/**
 * Whatever would make another program of it, with size and time of change; 0 for a file that changed after
 * `began`, which may have been read before: what was made of it is never used.
 */
function madeOf(modules: readonly string[], began: number): [file: string, size: number, changed: number][] {
  const others = globSync(['package-lock.json', '{packages,services}/*/package.json', `${migrations}/*`], {
    cwd: root,
  });
  const files = modules.map((file) => relative(root, file)).filter((file) => !file.includes('node_modules'));
  return [...new Set([...files, ...others])].map((file) => {
    const { size, mtimeMs } = statSync(join(root, file));
    return [file.split(sep).join('/'), size, mtimeMs < began ? mtimeMs : 0];
  });
}

/** The folders of earlier builds, the oldest first. */
function programsByAge(): string[] {
  const folders = globSync('program-*', { cwd: builtInto }).map((name) => join(builtInto, name));
  const age = new Map(folders.map((folder) => [folder, statSync(folder).mtimeMs]));
  return folders.toSorted((one, other) => age.get(one)! - age.get(other)!);
}

async function build(): Promise<void> {
  const began = Date.now();
  mkdirSync(builtInto, { recursive: true });
  const before = programsByAge();
  // A folder of its own each time: what runs from the last one goes on.
  const folder = mkdtempSync(join(builtInto, 'program-'));
  // Made for whoever makes it alone; the terminal is for everybody who may read its sources.
  chmodSync(folder, 0o755);
  const bundle = await rolldown({
    ...{ cwd: root, input: entries, platform: 'node', external: leftOutside, plugins: [besideTheOthers] },
  });
  await bundle.write({ dir: folder, format: 'esm', entryFileNames: '[name].js' });
  const modules = (await bundle.watchFiles).filter((file) => file.startsWith(root));
  await bundle.close();
  cpSync(join(root, migrations), join(folder, 'migrations'), { recursive: true });
  const text = JSON.stringify({ folder: basename(folder), madeOf: madeOf(modules, began) });
  writeFileSync(join(folder, 'built.json'), text);
  // At one stroke: nobody finds half of it.
  renameSync(join(folder, 'built.json'), join(builtInto, 'built.json'));
  for (const old of before.slice(0, -1)) rmSync(old, { recursive: true, force: true });
}

await build();
