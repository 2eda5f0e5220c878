import { join } from 'node:path';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

async function freshDatabase(): Promise<string[]> {
  const folder = await temporaryFolder('imports');
  onTestFinished(() => folder.remove());
  return ['--database', join(folder.path, 'lab.sqlite')];
}

// Invented.
const pairs = 'a,b,mixingEnthalpy,source\nAl,Ni,-30,invented\n';
const alloys = 'composition,name,phases,process,doi,note\nCoCrFeNi,trial 7,FCC,cast,,invented\n';

test('a file is previewed, stored, listed, withdrawn and brought back', async () => {
  const where = await freshDatabase();
  const run = (words: string[], input = '') => jsonOf(['data', ...words, ...where], { input });
  const preview = await run(['import', 'pairs', '-', '--preview'], pairs);
  expect(preview).toMatchObject({ storable: true, counts: { changed: 1 } });
  expect(await run(['imports'])).toEqual([]);
  const version = await run(['import', 'pairs', '-', '--name', 'Our pairs'], pairs);
  expect(version).toMatchObject({ number: 1, name: 'Our pairs', inForce: true });
  expect(await run(['imports'])).toEqual([version]);
  expect((await run(['versions'])).items).toMatchObject([{ current: true, with: [{ number: 1 }] }]);
  expect(await run(['withdraw', '1'])).toMatchObject({ inForce: false });
  expect(await run(['restore', '1'])).toEqual(version);
});

test('for reading, each row has its fate and what it takes the place of; a wrong one refuses the file', async () => {
  const where = await freshDatabase();
  const input = `${pairs}Al,Xx,1,\n`;
  const told = await tiegel(['data', 'import', 'pairs', '-', '--preview', ...where], { input });
  expect(told.code).toBe(0);
  expect(told.out).toMatch(/2 {2}changed {2}Al,Ni,-30,invented\n {6}before {3}-22 kJ\/mol/);
  expect(told.out).toMatch(/3 {2}refused {2}Al,Xx,1,\n.*Xx/);
  expect(told.out).toContain('0 new, 1 changed, 0 same, 1 refused.');
  const refused = await tiegel(['data', 'import', 'pairs', '-', ...where], { input });
  expect(refused.code).toBe(1);
  expect(refused.error).toContain('1 of 2 rows cannot be stored');
  expect((await tiegel(['data', 'import', 'other', '-', ...where], { input })).code).toBe(1);
  const none = await tiegel(['data', 'withdraw', '9', ...where]);
  expect([none.code, none.out]).toEqual([1, '']);
  expect(none.error).toContain('There is no import 9.');
  for (const number of ['abc', '1.5', '-1', ''])
    for (const act of ['withdraw', 'restore'])
      expect(await tiegel(['data', act, number, ...where])).toMatchObject({
        code: 1,
        error: expect.stringMatching(/Write the number of an import.*\[command\/usage\]/s),
      });
});

test('alloys that were brought in stand among the published ones', async () => {
  const where = await freshDatabase();
  await jsonOf(['data', 'import', 'alloys', '-', ...where], { input: alloys });
  const all = await jsonOf(['data', 'alloys', ...where]);
  expect(all).toHaveLength(publishedAlloys().length + 1);
  const own = await jsonOf(['data', 'alloys', '--own', '--has', 'Co,Fe', ...where]);
  expect(own).toMatchObject([{ name: 'trial 7', own: true, import: 1 }]);
  const { broughtIn, own: melted } = await jsonOf(['evidence', ...where]);
  expect([broughtIn.melts, melted]).toEqual([1, null]);
  const told = await tiegel(['data', 'alloys', '--text', 'trial', ...where]);
  expect(told.out).toContain('trial 7 (own, import 1)');
  expect((await tiegel(['data', 'alloys', '--has', 'Xx', ...where])).code).toBe(1);
});
