import module from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { builtFolder } from './built.mjs';

const leastNode = 24;
if (Number.parseInt(process.versions.node, 10) < leastNode) {
  console.error(
    `This is Node ${process.versions.node}; Node ${leastNode} or later is needed. npm run -s tiegel -- ... uses the one that the project brings.`,
  );
  process.exit(2);
}

// Reading the sources is two thirds of a short command's time; what Node made of them is kept beside
// the dependencies, and what it made of a built program in the folder of that, with which it goes: each
// build has other paths, of which nothing is ever taken again. Where that folder cannot be written, it reads them each time. This file alone is no
// TypeScript: to read one the reader is loaded, a tenth of a second, and nothing can be kept before it.
const built = builtFolder();
module.enableCompileCache(
  built === null ? join(import.meta.dirname, '../../../node_modules/.cache/node') : join(built, 'compiled'),
);
const part = (name) => import(pathToFileURL(join(built, `${name}.js`)).href);
await (built === null ? import('@tiegel/search/keepHeapSmall') : part('keepHeapSmall'));
const { run } = await (built === null ? import('./run.ts') : part('run'));
process.exitCode = await run(process.argv.slice(2));
