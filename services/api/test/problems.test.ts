import { fault, ProblemError, problems } from '@tiegel/contract/terms';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { problemBody } from '../src/problems/problemBody.ts';
import { type TestServer, testServer } from './fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer({
    workers: async () => {
      throw new Error('the carrier is out of reach');
    },
  });
});
afterAll(() => server.close());

const screen = (payload: string, type = 'application/json') =>
  server.ask({ method: 'POST', url: '/api/v1/screen', payload, headers: { 'content-type': type } });

test('a problem says what, where and what would be right, as RFC 9457 has it', async () => {
  const answer = await screen('{"compositions": ["AlXx"]}');
  expect(answer.headers['content-type']).toBe('application/problem+json');
  expect(answer.statusCode).toBe(400);
  const { detail, faults, ...rest } = answer.json();
  expect(rest).toEqual({
    type: 'urn:tiegel:problem:element/unknown',
    title: 'Unknown',
    status: 400,
    code: 'element/unknown',
  });
  expect(faults).toMatchObject([{ code: 'element/unknown', pointer: '/compositions/0', detail }]);
  expect(faults[0].remedy).toMatch(/\.$/);
});

test('text that is no JSON is answered with what is wrong in it', async () => {
  const answer = await screen('{"compositions": ["AlNi",]}');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().detail).toMatch(/^The body is not JSON: Unexpected token '\]'/);
});

test('a key that could change the prototype of an object is a key that nothing knows', async () => {
  const answer = await screen('{"__proto__": {"compositions": ["Ni"]}, "compositions": ["Co"]}');
  expect(answer.json().faults).toMatchObject([{ code: 'request/unknown-key', pointer: '/__proto__' }]);
  expect((await screen('{"compositions": [{"__proto__": 1}]}')).statusCode).toBe(400);
});

test.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data', 'text/csv'])(
  'a body of type %s is refused with the type that is taken',
  async (type) => {
    const answer = await screen('x', type);
    expect(answer.statusCode).toBe(415);
    expect(answer.json().faults[0].remedy).toBe('Send the body as application/json.');
  },
);

test('a body that is not UTF-8 is refused, JSON and CSV alike', async () => {
  const latin = Buffer.from('{"compositions": ["\u00e9"]}', 'latin1');
  const send = (method: 'POST' | 'PUT', path: string, type: string) =>
    server.ask({ method, url: `/api/v1${path}`, payload: latin, headers: { 'content-type': type } });
  for (const [method, path, type] of [
    ['POST', '/screen', 'application/json'],
    ['POST', '/imports?kind=prices', 'text/csv'],
    ['PUT', '/prices', 'text/csv'],
  ] as const) {
    const bytes = await send(method, path, type);
    expect([bytes.statusCode, bytes.json().code]).toEqual([400, 'request/unreadable']);
    const charset = await send(method, path, `${type}; charset=iso-8859-1`);
    expect(charset.statusCode).toBe(415);
    expect(charset.json().faults[0].remedy).toBe(`Send the body as ${type}; charset=utf-8.`);
  }
  const right = await screen('{"compositions": ["AlNi"]}', 'application/json; charset="UTF-8"');
  expect(right.statusCode).toBe(200);
});

test('a body above one mebibyte is refused before it is read', async () => {
  const answer = await screen(JSON.stringify({ compositions: ['Al'.repeat(1 << 19)] }));
  expect(answer.statusCode).toBe(413);
  expect(answer.json().code).toBe('request/too-large');
  expect(answer.json().detail).toBe('The body is larger than 1048576 bytes.');
});

test.each(['/%zz', '/api/v1/searches/%E0%A4%A', `/api/v1/searches/${'x'.repeat(400)}`])(
  'an address that cannot be read is refused: %s',
  async (url) => {
    const answer = await server.ask({ url });
    expect(answer.statusCode).toBe(400);
    expect(answer.json().code).toBe('request/unreadable');
  },
);

test('where something is, but not for this method, the methods that it takes are named', async () => {
  const answer = await server.ask({ method: 'DELETE', url: '/api/v1/searches/x/export?format=csv' });
  expect(answer.statusCode).toBe(405);
  expect(answer.headers.allow).toBe('GET');
  expect(answer.json().detail).toBe('/api/v1/searches/x/export does not take DELETE.');
});

test.each(['OPTIONS', 'TRACE'] as const)('%s is a method that no route takes', async (method) => {
  const answer = await server.ask({ method: method as 'OPTIONS', url: '/api/v1/searches' });
  expect(answer.statusCode).toBe(405);
  expect(answer.headers.allow).toBe('GET, HEAD, POST');
});

test('a failure of the server is told by a number and nothing of its inside', async () => {
  const broken = await testServer(
    {},
    {
      around: (searches) => ({
        ...searches,
        list() {
          throw new TypeError('inside');
        },
      }),
    },
  );
  const answer = await broken.ask({ url: '/api/v1/searches' });
  await broken.close();
  expect(answer.statusCode).toBe(500);
  expect(answer.json().code).toBe('server/fault');
  expect(answer.json().detail).toMatch(/under [0-9a-f]{12}\.$/);
  expect(answer.body).not.toMatch(/inside|TypeError|\.ts\b/);
});

test('a fault of the server leads where the request is wrong too', () => {
  const wrong = fault('request/malformed-json', { found: 'x' });
  const own = fault('server/fault', { id: 'x' });
  expect(problemBody([wrong, own])).toMatchObject({ status: 500, code: 'server/fault' });
  expect(problemBody([wrong])).toMatchObject({ status: problems[wrong.code].status, detail: wrong.detail });
});

test('several faults are told one by one, and their number in the whole', () => {
  const { faults } = new ProblemError([
    fault('request/after-and-at'),
    fault('server/stopping'),
    fault('request/malformed-json', { found: 'x' }),
  ]);
  const body = problemBody(faults);
  expect(body.faults).toHaveLength(3);
  expect(body.detail).toBe(`${faults[1]!.detail} 2 more things are wrong.`);
});

test('searches are accepted while no worker can be asked', async () => {
  const answer = await server.ask({ url: '/ready' });
  expect(answer.statusCode).toBe(200);
  expect(answer.json()).toEqual({ ready: true, workers: null });
});
