import { expect, test } from 'vitest';
import project from '../../../package.json' with { type: 'json' };
import { tiegel } from '../../../test/fixtures/tiegel.ts';

test('help is no fault', async () => {
  const { code, out, error } = await tiegel(['--help']);
  expect({ code, error }).toEqual({ code: 0, error: '' });
  for (const command of [
    'data',
    'screen',
    'explain',
    'compare',
    'substitute',
    'evidence',
    'charge',
    'weighing',
    'melt',
    'count',
    'search',
    'results',
  ])
    expect(out).toContain(`  ${command}`);
});

test('the version is that of the project', async () => {
  expect(await tiegel(['--version'])).toEqual({ code: 0, out: `${project.version}\n`, error: '' });
});

test.each(['results', 'shortlist', 'melt'])('what %s is about names its commands', async (group) => {
  const { out } = await tiegel([group, '--help']);
  const [about, listed] = out.split('Commands:');
  const names = [...listed!.matchAll(/^ {2}(\w+)/gm)]
    .map(([, name]) => name!)
    .filter((name) => name !== 'help');
  expect(names.length).toBeGreaterThan(3);
  for (const name of names) expect.soft(about).toMatch(new RegExp(`\\b${name}\\b`));
  expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(80);
});

test('without a command the help stands on standard error, and the request was wrong', async () => {
  for (const words of [[], ['data']]) {
    const { code, out, error } = await tiegel(words);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(error).toMatch(/^Usage: tiegel/);
  }
});

test('a slip in a command or an option is named with the near one', async () => {
  expect((await tiegel(['scren', 'Ni'])).error).toMatch(/scren.*screen/);
  const { code, error } = await tiegel(['screen', 'Ni', '--jsn']);
  expect(code).toBe(1);
  expect(error).toMatch(/--jsn.*--json/);
  expect(error).toContain('[command/usage]');
});

test('a file that is not there, a folder, and text that is no JSON are told apart', async () => {
  expect(await tiegel(['count', '/nowhere/spec.json'])).toMatchObject({
    code: 1,
    error: expect.stringContaining('there is no such file'),
  });
  expect(await tiegel(['screen', '--file', '/'])).toMatchObject({
    code: 1,
    error: expect.stringContaining('it is a folder'),
  });
  expect(await tiegel(['count', '-'], { input: '{"elements": ' })).toMatchObject({
    code: 1,
    error: expect.stringContaining('is not JSON'),
  });
});

test('a bad price list is answered with all that is wrong in it', async () => {
  const input =
    'symbol,pricePerKilogram,currency,date,source\nNi,-1,EUR,2026-10-01,a\nNx,2,USD,2026-10-01,b\n';
  const { code, error } = await tiegel(['data', 'elements', '--prices', '-'], { input });
  expect(code).toBe(1);
  expect(error).toContain('The price on line 2 is "-1"');
  expect(error).toContain('"Nx" on line 3 is not the symbol');
  expect(error).toContain('The price on line 3 is in USD');
  // Rows that are counted from 0 beside lines that are counted from 1 would name each place twice.
  expect(error).not.toContain('/rows/');
});
