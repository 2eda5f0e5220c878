import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { freePort } from '../fixtures/freePort.ts';
import { type RunningApi, startApi } from '../fixtures/processes.ts';
import { temporaryFolder } from '../fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../fixtures/tiegel.ts';

let folder: Awaited<ReturnType<typeof temporaryFolder>>;
let api: RunningApi;
let environment: Record<string, string>;
let melt: string;
beforeAll(async () => {
  folder = await temporaryFolder('meltFiles');
  api = await startApi({ dataFolder: join(folder.path, 'data'), port: await freePort(), workers: 1 });
  environment = { TIEGEL_SERVER: api.url, DATA_DIR: join(folder.path, 'data') };
  // All invented.
  const entry = {
    ...{
      name: 'Tray 7',
      date: '2026-11-25',
      charge: null,
      ingot: null,
      process: 'arc melting',
      anneal: null,
    },
    weighed: [
      { material: 'Fe', mass: 10 },
      { material: 'Ni', mass: 10 },
    ],
    ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: null, density: null, notes: '' },
  };
  const input = JSON.stringify(entry);
  ({ id: melt } = await jsonOf(['melt', 'record', '-'], { environment, input }));
});
afterAll(async () => {
  await api?.kill();
  await folder?.remove();
});

const ofMelt = (words: string[]) => tiegel(['melt', ...words], { environment });

test('a measurement is attached, read back byte for byte, taken away and brought back from the terminal', async () => {
  // A picture of one pixel, and the invented beginning of a diffraction pattern.
  const pixel = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==',
    'base64',
  );
  const [scan, picture] = [join(folder.path, 'scan.xy'), join(folder.path, 'etched.png')];
  await writeFile(scan, '30.00 112\n30.02 118\n');
  await writeFile(picture, pixel);
  const first = await jsonOf(['melt', 'attach', melt, scan], { environment });
  expect(first).toMatchObject({ name: 'scan.xy', type: 'text/plain', size: 20 });
  const told = await ofMelt(['attach', melt, picture, '--name', 'Etched, 200:1']);
  expect(told).toMatchObject({
    code: 0,
    error: '',
    out: expect.stringContaining('Etched, 200:1: image/png'),
  });
  const { attachments } = await jsonOf(['melt', 'show', melt], { environment });
  expect(attachments).toHaveLength(2);

  const into = join(folder.path, 'back.png');
  const back = ['attached', melt, attachments[1].id, '--into', into];
  expect(await ofMelt(back)).toMatchObject({ code: 0, out: `${into}: ${pixel.length} bytes.\n` });
  expect(await readFile(into)).toEqual(pixel);
  // Nothing is written over unless asked for.
  expect(await ofMelt(back)).toMatchObject({ code: 1, error: expect.stringContaining('[file/exists]') });
  expect((await ofMelt([...back, '--overwrite'])).code).toBe(0);
  expect((await ofMelt(['attached', melt, first.id, '--into', '-'])).out).toBe('30.00 112\n30.02 118\n');

  expect((await ofMelt(['detach', melt, first.id])).out).not.toContain('scan.xy');
  expect(await ofMelt(['attached', melt, first.id, '--into', '-'])).toMatchObject({ code: 1, out: '' });
  expect((await ofMelt(['reattach', melt, first.id])).out).toContain('scan.xy');
});

test.each([
  [['attach', 'none', 'PLACE'], 'melt/not-found', 1],
  [['attach', 'MELT', 'nowhere.xy'], 'file/unreadable', 1],
  [['attach', 'MELT', 'PLACE', '--name', 'a/b'], 'attachment/name', 1],
  [['attach', 'MELT', 'EMPTY'], 'file/empty', 1],
  [['attached', 'MELT', 'none', '--into', '-'], 'attachment/not-found', 1],
  [['attached', 'MELT', 'none'], 'command/usage', 1],
  [['detach', 'MELT', 'none'], 'attachment/not-found', 1],
  [['reattach', 'MELT', 'none'], 'attachment/not-found', 1],
  [['attach', 'MELT', 'LARGE'], 'request/too-large', 1],
  [['attach', 'MELT', 'PLACE', '--server', 'http://127.0.0.1:1'], 'server/out-of-reach', 2],
] as const)('what is wrong with melt %j is told with its code and exit', async (words, code, exit) => {
  const place = join(folder.path, 'any.txt');
  await writeFile(place, 'text\n');
  const empty = join(folder.path, 'empty.txt');
  await writeFile(empty, '');
  const large = join(folder.path, 'large.txt');
  await writeFile(large, Buffer.alloc(20_000_001, 'a'));
  const places: Record<string, string> = { MELT: melt, PLACE: place, EMPTY: empty, LARGE: large };
  const meant = words.map((word) => places[word] ?? word);
  expect(await ofMelt(meant)).toMatchObject({ code: exit, error: expect.stringContaining(`[${code}]`) });
});

test('a file of a kind that is not kept is refused in the words of the service', async () => {
  const place = join(folder.path, 'program');
  await writeFile(place, Buffer.from([0x7f, 0x45, 0x4c, 0x46, 0, 1, 2]));
  const { code, error } = await ofMelt(['attach', melt, place]);
  expect(code).toBe(1);
  expect(error).toContain('[attachment/type]');
});
