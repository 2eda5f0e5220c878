import { afterEach, beforeEach, expect, test, vi } from 'vitest';

beforeEach(() => {
  vi.resetModules();
  vi.stubGlobal('navigator', { language: 'en' });
});
afterEach(() => vi.unstubAllGlobals());
const load = () => import('../../src/alloy/editor/editorState.ts');

const rows = (texts: Record<string, string>) =>
  Object.entries(texts).map(([symbol, text]) => ({ symbol, text }));

test('amounts of any total are shares of it', async () => {
  const { readEditor } = await load();
  const { composition, total } = readEditor({ rows: rows({ Co: '1', Ni: '3' }), balance: null });
  expect(total).toBe(4);
  expect(composition).toEqual({ Co: 25, Ni: 75 });
});

test('the balance takes what the others leave of 100, and nothing where they leave nothing', async () => {
  const { readEditor } = await load();
  const left = readEditor({ rows: rows({ Cr: '12.5', Fe: 'whatever', Ni: '30' }), balance: 'Fe' });
  expect(left.amounts.Fe).toBe(57.5);
  expect(left.composition).toEqual({ Cr: 12.5, Fe: 57.5, Ni: 30 });
  const over = readEditor({ rows: rows({ Cr: '80', Fe: '', Ni: '30' }), balance: 'Fe' });
  expect(over.composition).toBeNull();
  expect(over.faults.Fe).toMatch(/more than 100/);
});

test('an empty field and a zero are absent; what is no amount is named and nothing is computed', async () => {
  const { readEditor } = await load();
  expect(
    readEditor({ rows: rows({ Co: '50', Cr: '', Ni: '0', V: '50' }), balance: null }).composition,
  ).toEqual({
    Co: 50,
    V: 50,
  });
  for (const text of ['x', '-3', '1,250']) {
    const { composition, faults } = readEditor({ rows: rows({ Co: text, Ni: '50' }), balance: null });
    expect(composition).toBeNull();
    expect(Object.keys(faults)).toEqual(['Co']);
  }
  expect(readEditor({ rows: rows({ Co: '0' }), balance: null }).composition).toBeNull();
});

test('a step stays on its grid and never below nothing', async () => {
  const { stepped } = await load();
  expect(stepped(0.3, 0.1, -1)).toBe(0.2);
  expect(stepped(7.5, 5, 1)).toBe(12.5);
  expect(stepped(3, 5, -1)).toBe(0);
  expect(stepped(null, 5, 1)).toBe(5);
});

test('made to 100, amounts keep their ratios', async () => {
  const { normalised } = await load();
  const { rows: made } = normalised({ rows: rows({ Co: '60', Ni: '60' }), balance: null }, String);
  expect(made.map(({ text }) => text)).toEqual(['50', '50']);
});
