import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

test('the answers stand in the order of the arguments', async () => {
  const screened = await jsonOf(['screen', 'NbMoTaW', 'Al7.69Co30.77Fe61.54', 'Co20 Cr20 Fe20 Mn20 Ni20']);
  expect(
    screened.map(({ composition }: { composition: object }) => Object.keys(composition).join(' ')),
  ).toEqual(['Mo Nb Ta W', 'Al Co Fe', 'Co Cr Fe Mn Ni']);
  // Closed form R ln 5, and 4 Σ H/25 on the table of Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817.
  expect(screened[2].quantities.configurationalEntropy).toBeCloseTo(8.314462618 * Math.log(5), 12);
  expect(screened[2].quantities.mixingEnthalpy).toBeCloseTo(-4.16, 12);
});

test('a quantity without a value is null', async () => {
  const [screened] = await jsonOf(['screen', 'Ni']);
  expect(screened.quantities.omega).toBeNull();
});

// By hand: 50 wt.% each; 50/58.6934 against 50/26.9815385.
test('--wt reads weights', async () => {
  const [{ composition }] = await jsonOf(['screen', '--wt', 'Al50Ni50']);
  expect(composition.Al).toBeCloseTo((100 * 58.6934) / (58.6934 + 26.9815385), 9);
});

test('a thousand alloys come from arguments, a file or standard input', async () => {
  const alloys = Array.from({ length: 1000 }, (_, index) => `Co${index + 1}Ni${1000 - index}`);
  const fromArguments = await jsonOf(['screen', ...alloys]);
  expect(fromArguments).toHaveLength(1000);
  const fromInput = await jsonOf(['screen', '--file', '-'], { input: `${alloys.join('\r\n')}\n\n` });
  expect(fromInput).toEqual(fromArguments);
});

test('arguments come before the lines of a file', async () => {
  const screened = await jsonOf(['screen', 'Ni', '--file', '-'], { input: 'Co\n' });
  expect(screened.map(({ composition }: { composition: object }) => composition)).toEqual([
    { Ni: 100 },
    { Co: 100 },
  ]);
});

test('all bad alloys are named, with what is wrong, and nothing is written', async () => {
  const { code, out, error } = await tiegel(['screen', 'XxNi', 'CoNi', 'NiNi', 'Al7,5', '--json']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(error).toMatch(/Alloy 1, "XxNi": /);
  expect(error).toMatch(/Alloy 3, "NiNi": /);
  expect(error).toMatch(/Alloy 4, "Al7,5": /);
  expect(error).not.toMatch(/CoNi| {4}at /);
});

test('no alloy at all is a wrong request', async () => {
  const { code, error } = await tiegel(['screen']);
  expect(code).toBe(1);
  expect(error).toMatch(/^No alloy was given/);
});

test('conditions are not available yet, and say so', async () => {
  const options = ['--service-temperature', '--anneal-temperature', '--strain-rate', '--grain-size'];
  const ran = await Promise.all(options.map((option) => tiegel(['screen', 'CoNi', option, '5'])));
  for (const [index, { code, error }] of ran.entries()) {
    expect(code).toBe(1);
    expect(error).toContain(`"${options[index]}" is not available yet`);
  }
});

test('where three alloys do not fit into a line, two or one stand in it', async () => {
  const input = 'symbol,pricePerKilogram,currency,date,source\nW,123456789.5,EUR,2026-10-01,a jest\n';
  const { out } = await tiegel(['screen', 'W', 'W', 'W', 'W', '--prices', '-'], { input });
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out.match(/^\d: W100 at\.%$/gm)).toHaveLength(4);
});

test('for reading, values stand under their alloy with their unit, within 80 characters', async () => {
  const { out } = await tiegel(['screen', 'AlCoCrFeNi', 'CoCrFeMnNi', 'NbMoTaW', 'Ni']);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/Mixing enthalpy +kJ\/mol +-12\.32 +-4\.16 +-6\.50/);
  expect(out).toMatch(/Entropy–enthalpy ratio +–/);
});
