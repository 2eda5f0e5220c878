import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { forgetSent, sentKey } from '../../src/server/sentKey.ts';

/** A storage as browsers have it: texts under names, that outlive the page. */
function storageOf(kept: Map<string, string>, full = false) {
  return {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, text: string) => {
      if (full) throw new DOMException('full', 'QuotaExceededError');
      kept.set(name, text);
    },
    removeItem: (name: string) => void kept.delete(name),
  };
}

let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('sessionStorage', storageOf(kept));
});
afterEach(() => vi.unstubAllGlobals());

/** The module as a page has it that was loaded again: nothing but the storage is left. */
async function reloaded() {
  vi.resetModules();
  return await import('../../src/server/sentKey.ts');
}

test('the same text has the same key until the answer came, after a reload too', async () => {
  const key = sentKey('sessionStorage', 'melt', 'Ni 10 g');
  expect(sentKey('sessionStorage', 'melt', 'Ni 10 g')).toBe(key);
  const again = await reloaded();
  expect(again.sentKey('sessionStorage', 'melt', 'Ni 10 g')).toBe(key);
  again.forgetSent('sessionStorage', 'melt');
  expect(again.sentKey('sessionStorage', 'melt', 'Ni 10 g')).not.toBe(key);
});

test('another text, and another form, has another key', () => {
  const keys = [
    sentKey('sessionStorage', 'melt', 'Ni 10 g'),
    sentKey('sessionStorage', 'melt', 'Ni 01 g'),
    sentKey('sessionStorage', 'import', 'Ni 10 g'),
  ];
  expect(new Set(keys).size).toBe(3);
});

test('the text itself is not kept a second time', () => {
  sentKey('sessionStorage', 'import', 'x'.repeat(1_000_000));
  expect([...kept.values()].join('').length).toBeLessThan(200);
});

test('where the storage is full the key holds as long as the page does', () => {
  vi.stubGlobal('sessionStorage', storageOf(kept, true));
  const key = sentKey('sessionStorage', 'melt', 'Ni 10 g');
  expect(sentKey('sessionStorage', 'melt', 'Ni 10 g')).toBe(key);
  forgetSent('sessionStorage', 'melt');
  expect(sentKey('sessionStorage', 'melt', 'Ni 10 g')).not.toBe(key);
});
