import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../test/fixtures/temporaryFolder.ts';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

async function freshDatabase(): Promise<string[]> {
  const folder = await temporaryFolder('access');
  onTestFinished(() => folder.remove());
  return ['--database', join(folder.path, 'lab.sqlite')];
}

test('a token is given out, told once, listed without it, and withdrawn', async () => {
  const where = await freshDatabase();
  const given = await tiegel(['access', 'give', 'Ana Berg', '--role', 'author', ...where]);
  const [token, blank, ...said] = given.out.split('\n');
  expect(token).toMatch(/^tiegel_[\w-]{43}$/);
  expect(blank).toBe('');
  expect(said.join(' ')).toContain('start and stop searches, and write shortlists, charge sheets and melts');

  const listed = await tiegel(['access', 'list', ...where]);
  expect(listed.out).toMatch(/Ana Berg\s+author\s+\d{4}-\d\d-\d\d \d\d:\d\d\s+–/);
  expect(listed.out).not.toContain(token!.slice(7));

  expect(await jsonOf(['access', 'withdraw', 'Ana Berg', ...where])).toMatchObject([
    { name: 'Ana Berg', role: 'author', withdrawnAt: expect.stringMatching(/^\d{4}-/) },
  ]);
});

test('what is wrong is told with exit 1: no role, an unknown one, a name that has a token or none', async () => {
  const where = await freshDatabase();
  const refusal = async (...words: string[]) => {
    const { code, error, out } = await tiegel(['access', ...words, ...where]);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    return error;
  };
  expect(await refusal('withdraw', 'Ana')).toContain('there is no such file');
  expect(await refusal('give', 'Ana')).toContain('--role');
  expect(await refusal('give', 'Ana', '--role', 'boss')).toContain('reader, author, keeper');
  expect(await refusal('give', ' ', '--role', 'reader')).toContain('Write 1 to 60 characters');
  // None of these made the database.
  expect(await refusal('list')).toContain('there is no such file');
  expect(await refusal('give', 'a\u200bb', '--role', 'reader')).toContain('[access/holder-name]');
  await tiegel(['access', 'give', 'Ana', '--role', 'reader', ...where]);
  expect(await refusal('withdraw', 'Ben')).toContain('[access/holder-unknown]');
  expect(await refusal('give', 'Ana', '--role', 'keeper')).toContain('[access/holder-known]');
});
