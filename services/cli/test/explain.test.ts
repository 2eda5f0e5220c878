import { expect, test } from 'vitest';
import { jsonOf, tiegel } from '../../../test/fixtures/tiegel.ts';

test('an alloy is told within 80 characters, with trust and sources', async () => {
  const { code, out, error } = await tiegel(['explain', 'AlCoCrFeNi']);
  expect({ code, error }).toEqual({ code: 0, error: '' });
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  for (const heading of ['What is published', 'Estimate of the phases', 'Demixing, as an explanation'])
    expect(out).toMatch(new RegExp(`^${heading}$`, 'm'));
  expect(out).toContain('Trust: ');
  expect(out).toMatch(/Source: .*Takeuchi & Inoue/);
});

test('the same content comes as JSON, at the conditions asked for', async () => {
  const told = await jsonOf(['explain', 'Nb', 'Mo', 'Ta', 'W', '--service-temperature', '1273']);
  expect(told.conditions).toMatchObject({ serviceTemperature: 1273, grainSize: null });
  // Worked value of this project: own calculation by an independent script.
  expect(told.strength.bcc.value).toBeCloseTo(357.3, 0);
  expect(told.paragraphs.map(({ subject }: { subject: string }) => subject)).toContain('disagreement');
  expect(told.composition).toEqual({ Mo: 25, Nb: 25, Ta: 25, W: 25 });
});

test('every quantity has the value that screen tells, the cost too', async () => {
  const [screened] = await jsonOf(['screen', 'CoCrFeNi']);
  const told = await jsonOf(['explain', 'CoCrFeNi']);
  expect(told.quantities.cost).toBeGreaterThan(0);
  expect(told.quantities).toEqual(screened.quantities);
});

// By hand: 50 wt.% each; 50/58.6934 against 50/26.9815385.
test('--wt reads weights', async () => {
  const { composition } = await jsonOf(['explain', '--wt', 'Al50Ni50']);
  expect(composition.Al).toBeCloseTo((100 * 58.6934) / (58.6934 + 26.9815385), 9);
});

test('what is no alloy is named', async () => {
  const { code, out, error } = await tiegel(['explain', 'XxNi']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(error).toContain('"Xx"');
});
