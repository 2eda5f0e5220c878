import { once } from 'node:events';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, onTestFinished, test } from 'vitest';
import { tiegel } from '../../../../test/fixtures/tiegel.ts';
import { tokenHeader } from '../../src/server/tokenHeader.ts';

const TIEGEL_TOKEN = 'tiegel_secret';

test.each([
  ['http://127.0.0.1:4270', 0],
  ['http://localhost:4270/tiegel', 0],
  ['http://[::1]:4270', 0],
  ['https://alloys.lab.example', 0],
  ['http://alloys.lab.example:4270', 1],
  ['http://127.0.0.1.lab.example', 1],
])('a token goes to %s with %i warnings', (address, warnings) => {
  const said: string[] = [];
  const header = tokenHeader(address, (text) => said.push(text), { TIEGEL_TOKEN: ` ${TIEGEL_TOKEN}\n` });
  expect(header).toEqual({ authorization: 'Bearer tiegel_secret' });
  expect(said).toHaveLength(warnings);
  for (const text of said) {
    expect(text).toContain(new URL(address).host);
    expect(text).not.toContain(TIEGEL_TOKEN);
  }
});

test('who has none sends none, and is warned of nothing', () => {
  for (const environment of [{}, { TIEGEL_TOKEN: ' ' }])
    expect(tokenHeader('http://alloys.lab.example', expect.unreachable, environment)).toEqual({});
});

async function serviceWith(answer: RequestListener): Promise<string> {
  const server = createServer(answer).listen(0, '127.0.0.1');
  onTestFinished(() => void server.close());
  await once(server, 'listening');
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

const list = (address: string, token: string) =>
  tiegel(['searches', 'list'], { environment: { TIEGEL_SERVER: address, TIEGEL_TOKEN: token } });

test.each(['tiegel_sec\nret', 'tiegel_sec…ret'])(
  'what no header can carry is refused unseen: %j',
  async (token) => {
    const { code, error, out } = await list('http://127.0.0.1:1', token);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(error).toContain('[configuration/invalid]');
    expect(error).not.toMatch(/tiegel_sec|ret\b/);
  },
);

test('what is sent follows no redirection: neither token nor body goes to a place that nobody named', async () => {
  const elsewhere: (string | undefined)[] = [];
  const other = await serviceWith(({ url }, response) => {
    elsewhere.push(url);
    response.end('[]');
  });
  const first = await serviceWith(({ url }, response) => {
    response.writeHead(307, { location: `${other}${url}` }).end();
  });
  const { code, error } = await list(first, TIEGEL_TOKEN);
  expect(code).toBe(2);
  expect(error).toContain('(status 307)');
  expect(elsewhere).toEqual([]);
});
