import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { request } from 'node:https';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fault } from '@tiegel/contract/terms';
import { candidateColumns } from '@tiegel/search';
import { openTokens } from '@tiegel/search/laboratory';
import { joinStore } from '@tiegel/store';
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

/** Gives a token out in the database of the service, as the terminal does while it runs or not. */
function giveToken(name: string): string {
  const store = joinStore({ file: join(folder, 'tiegel.sqlite'), columns: candidateColumns });
  const { token } = openTokens(store.tokens).give(name, 'keeper');
  store.close();
  return token;
}

test('TOKENS=yes is refused while nobody has one, and then serves a network, over which it is warned of', async () => {
  const settings = { TOKENS: 'yes', HOST: '0.0.0.0', PORT: String(await freePort()) };
  const early = run(settings);
  expect(await early.ended).toEqual({ code: 1, signal: null });
  expect(early.output()).toContain(fault('access/nobody').remedy);

  const token = giveToken('Ana');
  const one = run(settings);
  await serving(one);
  expect(one.output()).toContain('tokens cross the network as plain text');
  expect(one.output()).not.toContain('OPEN_NETWORK');
  const address = `http://127.0.0.1:${settings.PORT}/api/v1/searches`;
  expect((await fetch(address)).status).toBe(401);
  const asked = (sent: string) => fetch(address, { headers: { authorization: `Bearer ${sent}` } });
  expect((await asked(token)).status).toBe(200);
  expect((await asked(giveToken('Ben'))).status).toBe(200);
});

test('with a certificate it speaks TLS, and sends its cookie over nothing else', async () => {
  const tls = (name: string) => join(import.meta.dirname, 'fixtures/tls', name);
  const token = giveToken('Ana');
  const one = run({
    ...{ TOKENS: 'yes', HOST: '0.0.0.0', PORT: String(await freePort()) },
    ...{ TLS_CERTIFICATE: tls('certificate.pem'), TLS_KEY: tls('key.pem') },
  });
  const address = await serving(one);
  expect(address).toMatch(/^https:\/\//);
  expect(one.output()).not.toContain('WARNING');
  const body = JSON.stringify({ token });
  const sent = request(`https://localhost:${new URL(address).port}/api/v1/access`, {
    method: 'POST',
    ca: readFileSync(tls('certificate.pem')),
    headers: { 'content-type': 'application/json', 'content-length': body.length },
  }).end(body);
  const [answer] = await once(sent, 'response');
  expect(answer.statusCode).toBe(200);
  expect(answer.headers['set-cookie'][0]).toMatch(/; Secure$/);
  answer.destroy();
});

test('a second process on the same ledger is refused', async () => {
  const first = run({ PORT: String(await freePort()) });
  await serving(first);
  const second = run({ PORT: String(await freePort()) });
  expect((await second.ended).code).toBe(2);
  expect(second.output()).toContain('is in use by another process');
});
