import { join } from 'node:path';
import type { Shortlist, ShortlistAct } from '@tiegel/contract';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';
import { openLaboratory } from '../src/searching/openLaboratory.ts';

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
  for (const words of [['list'], ['show', 'none'], ['add', 'none', 'CoNi']])
    expect(await tiegel(['shortlist', ...words, ...where])).toMatchObject({
      code: 1,
      error: expect.stringContaining('[file/unreadable]'),
    });
  expect(await tiegel(['shortlist', 'begin', ' ', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('Write 1 to 120 characters, not 0.'),
  });
  const { id }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', '--json', ...where]);
  expect(await tiegel(['shortlist', 'show', 'none', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('[shortlist/unknown]'),
  });
  expect(await tiegel(['shortlist', 'note', id, 'CoNi', 'x', ...where])).toMatchObject({
    code: 1,
    error: expect.stringContaining('[shortlist/no-entry]'),
  });
  expect((await tiegel(['shortlist', 'status', id, 'CoNi', 'maybe', ...where])).code).toBe(1);
});

/** A list on which two people, who saw the same, set different things: what the page sends once it is back at the server. */
async function contestedList(): Promise<{ id: string; where: string[] }> {
  const database = await freshDatabase();
  const where = ['--database', database];
  const { id, sequence }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', ...where]);
  const { shortlists, close } = openLaboratory(database);
  const one = (by: string, seen: number, act: ShortlistAct) =>
    shortlists.change(id, [{ key: crypto.randomUUID(), by, seen, act }]);
  const [judged, noted] = ['Co50Ni50', 'Fe50Ni50'];
  one('Ana', sequence, { kind: 'add', entry: judged! });
  const { sequence: seen } = one('Ana', sequence, { kind: 'add', entry: noted! });
  one('Ana', seen, { kind: 'status', entry: judged!, status: 'to melt' });
  one('Ben', seen, { kind: 'status', entry: judged!, status: 'set aside' });
  one('Ben', seen, { kind: 'note', entry: noted!, text: 'Promising.' });
  one('Ana', seen, { kind: 'remove', entry: noted! });
  close();
  return { id, where };
}

test('what two people contradict each other in is listed with both versions, who and when', async () => {
  const { id, where } = await contestedList();
  const open = await jsonOf(['shortlist', 'conflicts', id, ...where]);
  expect(open).toMatchObject([
    {
      ...{ shortlist: id, entry: 'Co50Ni50', about: 'status' },
      versions: [
        { value: 'set aside', by: 'Ben', holds: true, at: expect.stringMatching(/Z$/) },
        { value: 'to melt', by: 'Ana', holds: false },
      ],
    },
    { entry: 'Fe50Ni50', about: 'removal', versions: [{ value: 'stays' }, { value: 'removed', by: 'Ana' }] },
  ]);
  expect(await jsonOf(['shortlist', 'conflicts', ...where])).toEqual(open);
  const { out } = await tiegel(['shortlist', 'conflicts', id, ...where]);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(
    /Co50 Ni50: status\n.*\n.*\n +set aside +Ben +\d{4}-.* holds until it is settled\n +to melt +Ana/,
  );
  expect((await tiegel(['shortlist', 'show', id, ...where])).out).toContain(`shortlist conflicts ${id}`);
});

test('one version is kept by whoever decides; then nothing is open', async () => {
  const { id, where } = await contestedList();
  const by = ['--by', 'Cy', ...where];
  const settled: Shortlist = await jsonOf(['shortlist', 'settle', id, 'NiCo', 'to melt', ...by]);
  expect(settled.entries[0]!.status).toMatchObject({ value: 'to melt', by: 'Cy', rivals: [] });
  const kept: Shortlist = await jsonOf(['shortlist', 'settle', id, 'FeNi', 'stays', ...by]);
  expect(kept.entries[1]!.removed).toMatchObject({ value: false, by: 'Cy', rivals: [] });
  expect(await jsonOf(['shortlist', 'conflicts', id, ...where])).toEqual([]);
  const { out } = await tiegel(['shortlist', 'conflicts', ...where]);
  expect(out).toBe('There is no open conflict.\n');
});

test('what cannot be settled is refused: no list, no entry, no conflict, a version that nobody set', async () => {
  const { id, where } = await contestedList();
  await jsonOf(['shortlist', 'add', id, 'CrNi', ...where]);
  const wrong = [
    [['none', 'CoNi', 'to melt'], 'shortlist/unknown', 'none'],
    [[id, 'AlNi', 'to melt'], 'shortlist/no-entry', 'Al50Ni50'],
    [[id, 'CrNi', 'to melt'], 'shortlist/no-conflict', 'Cr50Ni50'],
    [[id, 'CoNi', 'agreed'], 'request/wrong-value', 'Keep one of: "set aside" (Ben), "to melt" (Ana).'],
    [[id, 'CoNi', 'perhaps'], 'command/usage', 'to melt'],
    [[id, 'XxNi', 'to melt'], 'element/unknown', 'Xx'],
  ] as const;
  for (const [words, code, text] of wrong) {
    const ran = await tiegel(['shortlist', 'settle', ...words, ...where]);
    expect(ran).toMatchObject({ code: 1, out: '' });
    expect(ran.error).toContain(`[${code}]`);
    expect(ran.error).toContain(text);
  }
  const absent = await tiegel(['shortlist', 'conflicts', '--database', '/nowhere/lab.sqlite']);
  expect(absent.code).toBe(1);
});

test('texts and counts that the service refuses are refused here, too', async () => {
  const where = ['--database', await freshDatabase()];
  const { id }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', ...where]);
  await jsonOf(['shortlist', 'add', id, 'CoNi', ...where]);
  const wrong = [
    [['note', id, 'CoNi', 'x'.repeat(2001)], '1 to 2000 characters, not 2001'],
    [['note', id, 'CoNi', ' '], '1 to 2000 characters, not 0'],
    [['note', id, 'CoNi', 'x', '--by', ''], '1 to 60 characters, not 0'],
    [['pick', id, '--search', 's', '--count', '0'], 'from 1 to 100'],
    [['pick', id, '--search', 's', '--count', 'many'], 'from 1 to 100'],
    [['pick', id, '--search', 's', '--count', '1e6'], 'from 1 to 100'],
  ] as const;
  for (const [words, text] of wrong) {
    const ran = await tiegel(['shortlist', ...words, ...where]);
    expect(ran).toMatchObject({ code: 1, out: '', error: expect.stringContaining(text) });
  }
});

test('what others wrote does not steer the screen, and is the same in JSON', async () => {
  const where = ['--database', await freshDatabase()];
  const { id }: Shortlist = await jsonOf(['shortlist', 'begin', 'Impeller', ...where]);
  await jsonOf(['shortlist', 'add', id, 'CoNi', ...where]);
  const text = 'red \u001b[31m, and \u009b2J';
  await tiegel(['shortlist', 'note', id, 'CoNi', text, ...where]);
  const { out } = await tiegel(['shortlist', 'show', id, ...where]);
  expect(out).toContain('red \\u001b[31m, and \\u009b2J');
  const told: Shortlist = await jsonOf(['shortlist', 'show', id, ...where]);
  expect(told.entries[0]!.notes[0]!.text).toBe(text);
});
