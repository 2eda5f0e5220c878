import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { childProcess, type Running } from '../../../test/fixtures/childProcess.ts';
import { freePort } from '../../../test/fixtures/freePort.ts';
import { redisIsHere, redisServer } from '../../../test/fixtures/redisServer.ts';

const main = join(import.meta.dirname, '../src/main.ts');
const started: Running[] = [];
function worker(env: Record<string, string>): Running {
  const one = childProcess(process.execPath, [main], { env });
  started.push(one);
  return one;
}
afterEach(async () => {
  await Promise.all(started.splice(0).map((one) => one.kill()));
});
const says = (one: Running, text: string) =>
  expect.poll(() => one.output(), { timeout: 60_000 }).toContain(text);

test.each([
  [{}, 'The setting REDIS_URL is missing.'],
  [{ REDIS_URL: 'http://:geheim@localhost' }, 'The setting REDIS_URL is "(not shown)"'],
  [{ REDIS_URL: 'redis://localhost', WORKERS: '0' }, 'The setting WORKERS is "0"'],
  [{ REDIS_URL: 'redis://localhost', WORKERS: '1.5' }, 'The setting WORKERS is "1.5"'],
  [
    { REDIS_URL: 'redis://localhost', ALIVE_FILE: '/nowhere/alive' },
    'The setting ALIVE_FILE is "/nowhere/alive"',
  ],
])('settings %j end it with 1 and a sentence, without a stack or the password', async (env, sentence) => {
  const one = worker(env);
  expect(await one.ended).toEqual({ code: 1, signal: null });
  expect(one.output()).toContain(sentence);
  expect(one.output()).not.toMatch(/geheim|\n\s+at /);
});

test('every setting that is wrong is told at once', async () => {
  const one = worker({ WORKERS: 'many' });
  await one.ended;
  expect(one.output()).toContain('REDIS_URL is missing');
  expect(one.output()).toContain('WORKERS is "many"');
});

test('without Redis it says once where it looks, never with the password, and SIGTERM ends it with 0', async () => {
  const port = await freePort();
  const one = worker({ REDIS_URL: `redis://:geheim@127.0.0.1:${port}`, WORKERS: '1' });
  await says(one, `Redis at 127.0.0.1:${port} is out of reach`);
  await one.stop();
  expect(await one.ended).toEqual({ code: 0, signal: null });
  expect(one.output().match(/out of reach/g)).toHaveLength(1);
  expect(one.output()).not.toContain('geheim');
});

describe.skipIf(!redisIsHere())('with Redis', () => {
  test('it says so, touches its file, and goes on through an absence of Redis', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tiegel-worker-'));
    const alive = join(folder, 'alive');
    const redis = await redisServer();
    const one = worker({ REDIS_URL: redis.url, WORKERS: '1', ALIVE_FILE: alive });
    await says(one, 'is reached');
    const touched = async () => (await stat(alive)).mtimeMs;
    const before = await touched();
    await expect.poll(touched, { timeout: 60_000 }).toBeGreaterThan(before);
    await redis.kill();
    await says(one, 'is out of reach');
    const gone = await touched();
    await redis.start();
    await expect.poll(touched, { timeout: 60_000 }).toBeGreaterThan(gone);
    await one.stop();
    expect(await one.ended).toEqual({ code: 0, signal: null });
    await redis.close();
    await rm(folder, { recursive: true });
  });
});
