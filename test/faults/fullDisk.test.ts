import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { type SmallDisk, smallDisk } from '../fixtures/smallDisk.ts';
import { until } from '../fixtures/until.ts';
import { ask, found, startSearch, view, whenDone } from './overHttp.ts';
import { undisturbed } from './round.ts';

let disk: SmallDisk | null = null;
let api: RunningApi | null = null;
afterEach(async () => {
  await api?.kill();
  await disk?.close();
});

/** Ids, the newest first. */
const searches = async (url: string) =>
  (await ask<{ id: string }[]>(`${url}/api/v1/searches`)).map(({ id }) => id);

const submit = (url: string, specification: unknown) =>
  fetch(`${url}/api/v1/searches`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(specification),
  });

test('on a full disk the api says so, and once there is room everything is there and goes on', async (context) => {
  disk = await smallDisk(64);
  if (disk === null) return context.skip();
  const settings = { dataFolder: join(disk.path, 'data'), port: await freePort(), workers: 2 };
  api = await startApi(settings);
  const { url } = api;
  const { specification, expected } = await undisturbed(url, 3);
  const [before] = await searches(url);
  // Ended and started again, the database has no room left over in its log.
  await api.stop();
  api = await startApi(settings);

  // In the middle of a search.
  const interrupted = await startSearch(url, specification);
  await until('a part is done', async () => (await view(url, interrupted)).progress.points > 0);
  await disk.fill();
  const paused = await until('the search stands still', async () => {
    const now = await view(url, interrupted);
    return now.state === 'paused' && now;
  });
  expect(paused.reason).toMatch(/disk .* full/);
  expect(await found(url, before!)).toEqual(expected);

  // A new one is refused as soon as it needs room: the database has some left inside.
  const accepted: string[] = [];
  const refused = await until('a search is refused', async () => {
    const answer = await submit(url, specification);
    if (answer.status !== 202) return answer;
    accepted.unshift(((await answer.json()) as { id: string }).id);
    return null;
  });
  expect(refused.status).toBe(507);
  expect(refused.headers.get('content-type')).toContain('application/problem+json');
  expect(await refused.json()).toMatchObject({ code: 'store/full' });

  // Killed while the disk is full, started again when there is room.
  await api.kill();
  await disk.free();
  api = await startApi(settings);
  expect((await searches(url)).slice(0, accepted.length + 2)).toEqual([...accepted, interrupted, before]);
  for (const id of accepted) await ask(`${url}/api/v1/searches/${id}/cancel`, {});
  if ((await view(url, interrupted)).state === 'paused') {
    await ask(`${url}/api/v1/searches/${interrupted}/resume`, {});
  }
  await whenDone(url, interrupted);
  expect(await found(url, interrupted)).toEqual(expected);
  expect(await found(url, before!)).toEqual(expected);
});
