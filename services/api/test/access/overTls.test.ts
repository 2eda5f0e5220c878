import { once } from 'node:events';
import type { IncomingMessage } from 'node:http';
import { request } from 'node:https';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { connect } from 'node:tls';
import { openTokens } from '@tiegel/search/laboratory';
import { openStore } from '@tiegel/store';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readCertificate } from '../../src/access/certificate.ts';
import { readConfiguration } from '../../src/configuration.ts';
import { listen } from '../../src/listen.ts';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

const file = (name: string) => join(import.meta.dirname, '../fixtures/tls', name);
const store = openStore({ file: null, columns: [] });
const tokens = openTokens(store.tokens);
const { token } = tokens.give('Ana', 'author');

let server: TestServer;
let address: string;
beforeAll(async () => {
  const certificate = readCertificate({ certificate: file('certificate.pem'), key: file('key.pem') });
  server = await testServer({ tokens }, { certificate });
  address = await listen(server.app, { ...readConfiguration({}), port: 0 });
});
afterAll(async () => {
  await server.close();
  store.close();
});

async function ask(method: string, headers: Record<string, string>, body = '') {
  const sent = request(`${address}/api/v1/access`, { method, headers, rejectUnauthorized: false });
  sent.end(body);
  const [answer] = (await once(sent, 'response')) as [IncomingMessage];
  return { status: answer.statusCode, headers: answer.headers, ...JSON.parse(await text(answer)) };
}

const signIn = (headers = {}) =>
  ask('POST', { 'content-type': 'application/json', ...headers }, JSON.stringify({ token }));

test('a cookie is one that a browser takes from this very server alone, and no other counts', async () => {
  const cookie = (await signIn()).headers['set-cookie']![0]!;
  expect(cookie).toBe(
    `__Host-tiegel-token=${token}; Path=/; HttpOnly; SameSite=Strict; Max-Age=2592000; Secure`,
  );
  expect(await ask('GET', { cookie: `__Host-tiegel-token=${token}` })).toMatchObject({ name: 'Ana' });
  expect(await ask('GET', { cookie: `tiegel-token=${token}` })).toMatchObject({ name: null });
  expect((await ask('DELETE', {})).headers['set-cookie']![0]).toMatch(/^__Host-tiegel-token=;.*Max-Age=0/);
});

test('a page of the same name without TLS, which others can write on its way, changes nothing', async () => {
  expect(await signIn({ origin: address })).toMatchObject({ status: 200 });
  const plain = address.replace('https:', 'http:');
  expect(await signIn({ origin: plain })).toMatchObject({ status: 403, code: 'access/foreign-page' });
});

test('versions of TLS that are broken are refused', async () => {
  const { port } = server.app.server.address() as AddressInfo;
  const reached = (version: 'TLSv1.1' | 'TLSv1.2' | 'TLSv1.3') =>
    new Promise<string>((resolve) => {
      const range = { minVersion: version, maxVersion: version, ciphers: 'DEFAULT@SECLEVEL=0' };
      const socket = connect({ port, host: '127.0.0.1', rejectUnauthorized: false, ...range });
      socket.once('secureConnect', () => {
        resolve(socket.getProtocol()!);
        socket.destroy();
      });
      socket.once('error', () => resolve('refused'));
    });
  expect(await reached('TLSv1.1')).toBe('refused');
  expect(await reached('TLSv1.2')).toBe('TLSv1.2');
  expect(await reached('TLSv1.3')).toBe('TLSv1.3');
});
