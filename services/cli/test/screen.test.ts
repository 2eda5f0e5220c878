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

test('a pair value of one’s own takes the place of the other; a wrong file is refused', async () => {
  const input = 'a,b,mixingEnthalpy\nAl,Ni,-30\n'; // invented
  const [screened] = await jsonOf(['screen', 'AlNi', '--pairs', '-'], { input });
  // Closed form: 4 H c(1 − c) with c = 1/2 is the enthalpy of the pair.
  expect(screened.quantities.mixingEnthalpy).toBeCloseTo(-30, 12);
  const { code, error } = await tiegel(['screen', 'AlNi', '--pairs', '-'], { input: 'a,b\nAl,Ni\n' });
  expect(code).toBe(1);
  expect(error).toContain('mixingEnthalpy');
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

// Worked values of this project: own calculation by an independent script, four digits.
test('as JSON an alloy has verdicts, phases, what competes, strength and what is published nearby', async () => {
  const [cantor] = await jsonOf(['screen', 'CoCrFeMnNi']);
  expect(cantor.criteria).toMatchObject({ guo2011Fcc: true, sheikh2016: null });
  expect(cantor.phase).toMatchObject({ basis: 'ok', singleSolution: expect.any(Number) });
  expect(cantor.demixing.temperature).toBeCloseTo(239.98, 2);
  expect(cantor.demixing.words).toMatch(/manganese|chromium|nickel/);
  expect(cantor.ordering.sublattices).toHaveLength(2);
  expect(cantor.compounds.competing[0]).toMatchObject({
    formula: expect.any(String),
    fraction: expect.any(Number),
  });
  expect(cantor.strength.fcc.value).toBeCloseTo(92.16, 1);
  expect(cantor.nearest[0]).toMatchObject({ distance: expect.closeTo(0, 9), doi: expect.any(Array) });
});

test('conditions are those of the options, in the values as in the words', async () => {
  const words = ['screen', 'NbMoTaW', '--service-temperature', '1273', '--anneal-temperature', '900'];
  const [screened] = await jsonOf(words);
  expect(screened.strength).toMatchObject({ temperature: 1273, bcc: { value: expect.closeTo(357.3, 0) } });
  expect(screened.quantities.yieldStrengthBcc).toBe(screened.strength.bcc.value);
  expect(screened.compounds.temperature).toBe(900);
  const { out } = await tiegel([...words, '--grain-size', '20', '--strain-rate', '1e-4']);
  const line = out.replaceAll('\n', ' ');
  expect(line).toContain('anneal temperature 900 K, service temperature 1273 K, strain rate 0.0001 1/s');
  expect(line).toContain('grain size 20 µm');
});

test('a condition out of its range, or that is no number, is named with the range', async () => {
  const wrong = [
    ['--service-temperature', '3', '4 to 3500 K'],
    ['--anneal-temperature', 'hot', '4 to 3500 K'],
    ['--strain-rate', '1e5', '1e-8 to 10000 1/s'],
    ['--grain-size', '', '0.1 to 10000 µm'],
  ] as const;
  for (const [option, value, range] of wrong) {
    const { code, error } = await tiegel(['screen', 'CoNi', option, value]);
    expect(code).toBe(1);
    expect(error).toContain(option);
    expect(error).toContain(range);
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

// Domains of the models and distance to published alloys as in --json; values of this project.
test('for reading, an estimate without a basis is left out, and strengths outside their domain are marked', async () => {
  const alloys = ['CuFe', 'CoCrFeMnNi', 'MoNbTaW', 'NbTi'];
  const known = await jsonOf(['screen', ...alloys]);
  const { out } = await tiegel(['screen', ...alloys]);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/^Estimate of one solid solution +–\* +0\.\d\d/m);
  const away = (100 * known[0].phase.nearestDistance).toFixed(0);
  expect(out).toContain(`* No basis for the estimate: nearest published alloy ${away} % away (1)`);
  expect(known[1].strength.fcc.domain).toBe('inside');
  expect(out).toMatch(/^Yield strength.*fcc.* \d+† +\d+ /m);
  expect(out).toContain('† Outside what the model of the strength was tested on.');
});
