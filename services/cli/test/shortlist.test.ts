import { join } from 'node:path';
import type { Shortlist } from '@tiegel/contract';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

async function freshDatabase(): Promise<string> {
  const folder = await temporaryFolder('shortlist');
  onTestFinished(() => folder.remove());
  return join(folder.path, 'lab.sqlite');
}

test('a list is begun, filled, noted on, judged and read back', async () => {
  const where = ['--database', await freshDatabase(), '--by', 'Ana', '--json'];
  const { id }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', ...where]);
  await jsonOf(['shortlist', 'add', id, 'CoCrFeMnNi', 'NbMoTaW', ...where]);
  await jsonOf(['shortlist', 'note', id, 'NiMnFeCrCo', 'Known to work cold.', ...where]);
  const judged: Shortlist = await jsonOf(['shortlist', 'status', id, 'CoCrFeMnNi', 'to melt', ...where]);
  expect(judged.entries).toMatchObject([
    { entry: 'Co20Cr20Fe20Mn20Ni20', status: { value: 'to melt', by: 'Ana', rivals: [] } },
    { entry: 'Mo25Nb25Ta25W25', status: { value: 'proposed' } },
  ]);
  const { out } = await tiegel(['shortlist', 'show', id, ...where.slice(0, 2)]);
  expect(out).toContain('Known to work cold.');
  expect(out).toContain('to melt, added by Ana');
  const lists: Shortlist[] = await jsonOf(['shortlist', 'list', ...where]);
  expect(lists.map((one) => one.id)).toEqual([id]);
});

test('what is wrong is told with exit 1: no such list, no such alloy, no such status', async () => {
  const where = ['--database', await freshDatabase()];
  expect(await tiegel(['shortlist', 'show', 'none', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('[shortlist/unknown]'),
  });
  expect(await tiegel(['shortlist', 'begin', ' ', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('Write a name of up to 120 characters.'),
  });
  const { id }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', '--json', ...where]);
  expect(await tiegel(['shortlist', 'note', id, 'CoNi', 'x', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('[shortlist/no-entry]'),
  });
  expect((await tiegel(['shortlist', 'status', id, 'CoNi', 'maybe', ...where])).code).toBe(1);
});
