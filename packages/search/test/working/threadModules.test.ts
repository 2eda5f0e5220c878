import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';

const listing = `
  import { registerHooks } from 'node:module';
  const urls = new Set();
  registerHooks({ load(url, context, next) { urls.add(url); return next(url, context); } });
  await import('@tiegel/search/scoringThread');
  console.log(JSON.stringify([...urls]));
`;

test('a scoring thread starts without schemas, database and Redis', () => {
  const words = ['--input-type=module', '--eval', listing];
  const urls: string[] = JSON.parse(
    execFileSync(process.execPath, words, { cwd: import.meta.dirname, encoding: 'utf8' }),
  );
  const read = (part: string) => urls.filter((url) => url.includes(part));

  expect(read('packages/engine/src/')).not.toEqual([]);
  expect(read('node_modules/zod/')).toEqual([]);
  expect(read('node_modules/better-sqlite3/')).toEqual([]);
  expect(read('node_modules/bullmq/')).toEqual([]);
});
