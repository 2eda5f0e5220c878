import { once } from 'node:events';
import { createServer, get, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { afterEach, expect, test, vi } from 'vitest';
import { type EventStream, openEventStream, type Pace } from '../../src/events/openEventStream.ts';

const closers: (() => void)[] = [];
afterEach(() => {
  for (const close of closers.splice(0)) close();
});

/** A real connection with a stream at its one end. */
async function connected(
  pace: Pace,
): Promise<{ stream: EventStream; reader: IncomingMessage; closed: Promise<void> }> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  closers.push(
    () => server.closeAllConnections(),
    () => server.close(),
  );
  const request = get({ port: (server.address() as AddressInfo).port, host: '127.0.0.1' });
  const [, response] = (await once(server, 'request')) as [IncomingMessage, ServerResponse];
  let close = () => {};
  const closed = new Promise<void>((resolve) => {
    close = resolve;
  });
  const stream = openEventStream(response, pace, close);
  const [reader] = (await once(request, 'response')) as [IncomingMessage];
  return { stream, reader, closed };
}

const never = 60_000;

test('a state is sent with its id and name, and the time after which a reader comes back', async () => {
  const { stream, reader } = await connected({ gapMs: never, commentMs: never });
  stream.show({ id: 7, name: 'search', data: { state: 'running' } });
  stream.end();
  expect(reader.headers).toMatchObject({
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
  });
  expect(await text(reader)).toBe('retry: 2000\n\nid: 7\nevent: search\ndata: {"state":"running"}\n\n');
});

test('of states that come faster than the pace the newest is sent, and the last one always', async () => {
  const { stream, reader } = await connected({ gapMs: never, commentMs: never });
  for (let id = 1; id <= 50; id++) stream.show({ id, name: 'search', data: id });
  stream.end();
  expect((await text(reader)).match(/^id: .*$/gm)).toEqual(['id: 1', 'id: 50']);
});

test('a state that had to wait is sent when the gap is over', async () => {
  const { stream, reader } = await connected({ gapMs: 20, commentMs: never });
  stream.show({ id: 1, name: 'search', data: 1 });
  stream.show({ id: 2, name: 'search', data: 2 });
  let seen = '';
  for await (const part of reader) {
    seen += part;
    if (seen.includes('id: 2\n')) break;
  }
  expect(seen).toContain('id: 1\n');
});

test('a quiet stream is kept open by comments', async () => {
  const { reader } = await connected({ gapMs: never, commentMs: 20 });
  let seen = '';
  for await (const part of reader) {
    seen += part;
    if ((seen.match(/^: /gm) ?? []).length >= 2) break;
  }
  expect(seen).not.toContain('data:');
});

test('a reader that does not read holds up nothing but itself: states wait as one', async () => {
  const { stream, reader } = await connected({ gapMs: 1, commentMs: never });
  vi.useFakeTimers({ toFake: ['setTimeout'] });
  reader.pause();
  const filler = 'x'.repeat(1 << 20);
  for (let id = 1; id <= 100; id++) {
    stream.show({ id, name: 'search', data: filler });
    // The gap passes: only the reader holds up what follows.
    vi.advanceTimersByTime(1);
  }
  vi.useRealTimers();
  stream.end();
  const events = (await text(reader)).match(/^id: .*$/gm)!;
  expect(events.length).toBeLessThan(20);
  expect(events.at(-1)).toBe('id: 100');
});

test('a reader that goes is noticed, and showing more is harmless', async () => {
  const { stream, reader, closed } = await connected({ gapMs: 0, commentMs: 5 });
  reader.destroy();
  await closed;
  stream.show({ id: 1, name: 'search', data: null });
  stream.end();
});
