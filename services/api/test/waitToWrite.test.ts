import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { pino } from 'pino';
import { expect, onTestFinished, test } from 'vitest';
import { readConfiguration } from '../src/configuration.ts';
import { listen } from '../src/listen.ts';
import { openParts } from '../src/openParts.ts';
import { buildServer } from '../src/server.ts';
import { fixtureSearch } from './fixtures/testServer.ts';

test('while another program writes, what would write waits, and all else is answered', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'api-test-'));
  const configuration = readConfiguration({ DATA_DIR: folder, WORKERS: '1', PORT: '0' });
  const { parts, close } = await openParts(configuration, pino({ level: 'silent' }));
  const app = await buildServer(parts);
  const api = `${await listen(app, configuration)}/api/v1`;
  onTestFinished(async () => {
    await app.close();
    await close();
    rmSync(folder, { recursive: true, force: true });
  });
  const other = new Database(join(folder, 'tiegel.sqlite'));
  const order: string[] = [];
  const ask = async (path: string, specification?: object) => {
    const sent = { method: 'POST', body: JSON.stringify(specification) };
    const headers = { 'content-type': 'application/json' };
    const { status } = await fetch(api + path, specification === undefined ? {} : { ...sent, headers });
    order.push(path);
    return status;
  };
  const { specification } = fixtureSearch('six-5pct-omega');
  other.exec('begin immediate');
  const writing = ask('/searches', specification);
  for (let times = 0; times < 5; times += 1) expect(await ask('/count', specification)).toBe(200);
  expect(await ask('/elements')).toBe(200);
  other.exec('rollback');
  expect(await writing).toBe(202);
  expect(order.at(-1)).toBe('/searches');
  other.exec('begin immediate');
  expect(await ask('/searches', specification)).toBe(503);
  expect(await ask('/count', specification)).toBe(200);
  other.close();
});
