import { once } from 'node:events';
import { get, type IncomingMessage, request } from 'node:http';
import { type AddressInfo, connect } from 'node:net';
import { text } from 'node:stream/consumers';
import type { SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { until } from '../../../test/fixtures/until.ts';
import { readConfiguration } from '../src/configuration.ts';
import { listen } from '../src/listen.ts';
import { fixtureSearch, type TestServer, testServer } from './fixtures/testServer.ts';

/** How many rows exports have taken from the ledger, and whether the last one let go of it. */
const reading = { rows: 0, open: 0 };

function watched(searches: Searches): Searches {
  return {
    ...searches,
    export(id, query) {
      const { head, rows } = searches.export(id, query);
      return { head, rows: counted(rows) };
    },
  };
}

function* counted<Row>(rows: Iterable<Row>): Generator<Row> {
  reading.open++;
  try {
    for (const row of rows) {
      reading.rows++;
      yield row;
    }
  } finally {
    reading.open--;
  }
}

/** Keeps 50,000 of 271,320 points: some 25 MB as CSV. */
const large = {
  ...fixtureSearch('five-5pct-limits-on-grid-values').specification,
  limits: [],
  keep: 50_000,
};

let server: TestServer;
let address: string;
let largeId: string;
beforeAll(async () => {
  server = await testServer({}, { around: watched });
  address = await listen(server.app, { ...readConfiguration({}), port: 0 });
  largeId = (await server.search(large)).id;
});
afterAll(() => server.close());

async function open(path: string, headers: Record<string, string> = {}): Promise<IncomingMessage> {
  const [response] = (await once(get(address + path, { headers }), 'response')) as [IncomingMessage];
  return response;
}

interface Heard {
  id: number;
  view: SearchView;
}

/** The events of a stream as they come. */
async function* eventsOf(response: IncomingMessage): AsyncGenerator<Heard> {
  let rest = '';
  for await (const part of response.setEncoding('utf8')) {
    rest += part;
    const blocks = rest.split('\n\n');
    rest = blocks.pop()!;
    for (const block of blocks) {
      const found = /^id: (\d+)\nevent: search\ndata: (.*)$/.exec(block);
      if (found) yield { id: Number(found[1]), view: JSON.parse(found[2]!) };
    }
  }
}

async function start(specification: object): Promise<string> {
  return (await server.searches.submit(specification)).id;
}

test('a search is heard from its start to its end, each state once and in order', async () => {
  const id = await start(fixtureSearch('six-5pct-million').specification);
  const heard: Heard[] = [];
  for await (const event of eventsOf(await open(`/api/v1/searches/${id}/events`))) heard.push(event);
  const ids = heard.map((event) => event.id);
  expect(ids).toEqual([...new Set(ids)].toSorted((a, b) => a - b));
  const points = heard.map(({ view }) => view.progress.points);
  expect(points).toEqual(points.toSorted((a, b) => a - b));
  expect(heard.at(-1)!.view).toEqual(server.searches.view(id));
  expect(heard.at(-1)!.view.state).toBe('done');
});

test('a reader that comes back with the id of its last event hears only what is newer', async () => {
  const id = await start(fixtureSearch('six-5pct-million').specification);
  const first = await open(`/api/v1/searches/${id}/events`);
  const { value } = await eventsOf(first).next();
  first.destroy();
  const read = (value as Heard).id;
  await server.searches.finished(id);

  const later: Heard[] = [];
  const again = await open(`/api/v1/searches/${id}/events`, { 'last-event-id': String(read) });
  for await (const event of eventsOf(again)) later.push(event);
  expect(later.length).toBeGreaterThan(0);
  expect(later.every((event) => event.id > read)).toBe(true);
  expect(later.at(-1)!.view.state).toBe('done');

  // 204 is what makes a browser stop asking.
  const nothing = await open(`/api/v1/searches/${id}/events`, { 'last-event-id': String(later.at(-1)!.id) });
  expect(nothing.statusCode).toBe(204);

  for (const foreign of ['999999', '-1', 'x']) {
    const whole = await open(`/api/v1/searches/${id}/events`, { 'last-event-id': foreign });
    expect((await eventsOf(whole).next()).value.view.state, foreign).toBe('done');
  }
});

test('a stream of a search that is unknown is an ordinary refusal', async () => {
  const answer = await open('/api/v1/searches/nosuchsearch/events');
  expect(answer.statusCode).toBe(404);
  expect(JSON.parse(await text(answer)).code).toBe('search/unknown');
});

// A Parquet file of this size would stand whole in the buffers of the system: test/exports has its own.
test.each(['csv', 'ndjson'])(
  'a %s export is read no faster than it is taken, holds up nobody else, and comes whole',
  async (format) => {
    reading.rows = 0;
    const response = await open(`/api/v1/searches/${largeId}/export?format=${format}`);
    response.pause();
    let before = -1;
    await until(
      'the server stops reading rows',
      () => {
        const still = reading.rows > 0 && reading.rows === before;
        before = reading.rows;
        return still;
      },
      { everyMs: 200 },
    );
    // The rest stands in buffers of the system, some 10 MB.
    expect(reading.rows).toBeLessThan(45_000);
    expect((await open('/health')).statusCode).toBe(200);

    let bytes = 0;
    for await (const part of response) bytes += part.length;
    expect(bytes).toBeGreaterThan(5_000_000);
    expect(reading).toEqual({ rows: 50_000, open: 0 });
  },
);

test.each(['csv', 'ndjson', 'parquet'])(
  'a reader of %s that goes away lets go of the ledger',
  async (format) => {
    const response = await open(`/api/v1/searches/${largeId}/export?format=${format}`);
    await until('rows are read', () => reading.open === 1);
    response.destroy();
    await until('the rows are closed', () => reading.open === 0);
    // The ledger still takes what is written.
    expect((await server.search(fixtureSearch('one-to-two-unranked-last').specification)).state).toBe('done');
  },
);

/** Asks with a body and reads no more of the answer than its head. */
async function send(path: string, body: unknown): Promise<IncomingMessage> {
  const asked = request(address + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    agent: false,
  });
  asked.end(JSON.stringify(body));
  const [response] = (await once(asked, 'response')) as [IncomingMessage];
  return response.pause();
}

async function refusedAsBusy(response: IncomingMessage, what: string): Promise<void> {
  expect(response.statusCode).toBe(503);
  expect(Number(response.headers['retry-after'])).toBeGreaterThan(0);
  expect(JSON.parse(await text(response))).toMatchObject({
    code: 'server/busy',
    detail: expect.stringContaining(what),
  });
}

test('an answer about many alloys comes while it is worked out; a few such are worked on at once, until their readers go', async () => {
  const alloys = (count: number) =>
    Array.from({ length: count }, (_, place) => `Al${1 + (place % 40)}Co20Cr${10 + (place % 31)}Fe20Ni20`);
  const many = { compositions: alloys(10_000) };
  const first = await send('/api/v1/screen', many);
  const second = await send('/api/v1/screen', many);
  await refusedAsBusy(await send('/api/v1/screen', many), '2 screenings of many alloys');

  const few = await send('/api/v1/screen', { compositions: alloys(3) });
  expect(JSON.parse(await text(few))).toHaveLength(3);

  first.destroy();
  const next = await until('a place is free', async () => {
    const response = await send('/api/v1/screen', { compositions: alloys(300) });
    if (response.statusCode === 200) return response;
    response.destroy();
    return undefined;
  });
  expect(JSON.parse(await text(next))).toHaveLength(300);
  second.destroy();
});

test('a few exports are open at once; the next is told to come back, and has its turn when one is left', async () => {
  const path = `/api/v1/searches/${largeId}/export?format=ndjson`;
  const nextExport = async () => (await open(path)).pause();
  const four = [await nextExport(), await nextExport(), await nextExport(), await nextExport()];
  for (const one of four) expect(one.statusCode).toBe(200);
  await refusedAsBusy(await nextExport(), '4 exports');
  expect((await open(`/api/v1/searches/nosuchsearch/export?format=csv`)).statusCode).toBe(503);
  for (const one of four) one.destroy();
  await until('the rows are closed', () => reading.open === 0);
  for (let refused = 0; refused < 8; refused += 1) {
    expect((await open(`/api/v1/searches/nosuchsearch/export?format=csv`)).statusCode).toBe(404);
  }
});

test('a thousand requests as fast as they go are all answered', async () => {
  const answers = await Promise.all(
    Array.from({ length: 1000 }, async () => {
      const response = await open('/health');
      response.resume();
      return response.statusCode;
    }),
  );
  expect(new Set(answers)).toEqual(new Set([200]));
});

test('what is no HTTP is answered as a problem, and the connection ends', async () => {
  const { port } = server.app.server.address() as AddressInfo;
  const socket = connect(port, '127.0.0.1');
  socket.write('open the door\r\n\r\n');
  const [head, body] = (await text(socket)).split('\r\n\r\n');
  expect(head).toMatch(/^HTTP\/1.1 400 Bad Request\r\ncontent-type: application\/problem\+json/);
  expect(JSON.parse(body!).code).toBe('request/unreadable');
});

test.each([
  ['without a Host', '', 'it has no Host header'],
  ['with two of them', 'host: localhost\r\nhost: other.example\r\n', 'it has more than one Host header'],
])('a request of HTTP/1.1 %s is answered as a problem', async (_, hosts, what) => {
  const { port } = server.app.server.address() as AddressInfo;
  const socket = connect(port, '127.0.0.1');
  socket.write(`GET /api/v1/searches HTTP/1.1\r\n${hosts}connection: close\r\n\r\n`);
  const [head, body] = (await text(socket)).split('\r\n\r\n');
  expect(head).toMatch(/^HTTP\/1.1 400 Bad Request\r\n/);
  expect(head).toContain('content-type: application/problem+json');
  expect(body).toContain('"code":"request/unreadable"');
  expect(body).toContain(what);
});

test('while the service stops, whoever still asks is told so', async () => {
  const other = await testServer();
  const stopping = Promise.withResolvers<void>();
  const stopped = Promise.withResolvers<void>();
  other.app.addHook('preClose', () => {
    stopping.resolve();
    return stopped.promise;
  });
  const place = await listen(other.app, { ...readConfiguration({}), port: 0 });
  const closing = other.close();
  await stopping.promise;
  for (const path of ['/ready', '/api/v1/searches']) {
    const answer = await fetch(place + path);
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({ code: 'server/stopping' });
  }
  stopped.resolve();
  await closing;
});

test('an open stream does not keep the server from closing', async () => {
  const other = await testServer();
  const place = await listen(other.app, { ...readConfiguration({}), port: 0 });
  const { id } = await other.searches.submit(large);
  const [response] = (await once(get(`${place}/api/v1/searches/${id}/events`), 'response')) as [
    IncomingMessage,
  ];
  const ended = text(response);
  await other.close();
  expect(await ended).toContain('event: search');
});
