import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { childProcess, type Running } from '../../../test/fixtures/childProcess.ts';
import { freePort } from '../../../test/fixtures/freePort.ts';
import { until } from '../../../test/fixtures/until.ts';

const main = join(import.meta.dirname, '../src/main.ts');
const folder = mkdtempSync(join(tmpdir(), 'api-'));
const running: Running[] = [];
afterEach(async () => {
  for (const one of running.splice(0)) await one.kill();
  rmSync(folder, { recursive: true, force: true });
});

function run(env: Record<string, string>): Running {
  const one = childProcess(process.execPath, [main], { env: { DATA_DIR: folder, WORKERS: '1', ...env } });
  running.push(one);
  return one;
}

/** The address that the process prints once it serves; throws what it said where it ended instead. */
const serving = (one: Running) =>
  until('the address is printed', () => {
    if (!one.alive()) throw new Error(`It ended instead of serving:\n${one.output()}`);
    return /Tiegel is at (\S+)/.exec(one.output())?.[1];
  });

test('the address is printed last, answers, and a polite signal ends the process well', async () => {
  const port = await freePort();
  const one = run({ PORT: String(port) });
  const address = await serving(one);
  expect(address).toBe(`http://127.0.0.1:${port}`);
  expect(one.output().trimEnd().endsWith(address)).toBe(true);
  expect(await (await fetch(`${address}/ready`)).json()).toEqual({ ready: true, workers: 1 });
  await one.stop();
  expect(await one.ended).toEqual({ code: 0, signal: null });
});

test('a port in use is named, with one that may be free', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  const { port } = other.address() as { port: number };
  const one = run({ PORT: String(port) });
  expect(await one.ended).toEqual({ code: 1, signal: null });
  other.close();
  expect(one.output()).toContain(`Something already listens on 127.0.0.1, port ${port}`);
  expect(one.output()).toContain(`PORT=${port + 1} npm start`);
  expect(one.output()).not.toMatch(/^\s+at /m);
});

test('an address that is not of this computer is refused in words', async () => {
  const one = run({ HOST: '192.0.2.1', OPEN_NETWORK: 'yes', PORT: '0' });
  expect(await one.ended).toEqual({ code: 1, signal: null });
  expect(one.output()).toContain('The server cannot listen on 192.0.2.1');
});

test('wrong settings end the start, all of them named', async () => {
  const one = run({ PORT: 'http', MAX_POINTS: '-3', HOST: '0.0.0.0' });
  expect(await one.ended).toEqual({ code: 1, signal: null });
  for (const name of ['PORT', 'MAX_POINTS', 'OPEN_NETWORK=yes']) expect(one.output()).toContain(name);
  expect(one.output()).not.toMatch(/^\s+at /m);
});

test('an open network is warned of', async () => {
  const one = run({ HOST: '0.0.0.0', OPEN_NETWORK: 'yes', PORT: String(await freePort()) });
  await serving(one);
  expect(one.output()).toMatch(/^WARNING: OPEN_NETWORK=yes\. Anyone who reaches/);
});

test('a second process on the same ledger is refused', async () => {
  const first = run({ PORT: String(await freePort()) });
  await serving(first);
  const second = run({ PORT: String(await freePort()) });
  expect((await second.ended).code).toBe(2);
  expect(second.output()).toContain('is in use by another process');
});
