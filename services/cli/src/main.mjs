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

// Reading the sources takes two thirds of a short command's time, so what Node made of them is kept: beside the
// dependencies, or, of a built program, in that program's folder. Each build lies under another path: what is kept of
// an old one would never be used again, and so goes with it. Where nothing can be written, all is read each time.
// This file alone is no TypeScript: loading the reader of TypeScript takes a tenth of a second, before anything is kept.
const built = builtFolder();
module.enableCompileCache(
  built === null ? join(import.meta.dirname, '../../../node_modules/.cache/node') : join(built, 'compiled'),
);
const part = (name) => import(pathToFileURL(join(built, `${name}.js`)).href);
await (built === null ? import('@tiegel/search/keepHeapSmall') : part('keepHeapSmall'));
const { run } = await (built === null ? import('./run.ts') : part('run'));
process.exitCode = await run(process.argv.slice(2));
