import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { dataSets, hazardSources, sources } from '../src/index.ts';

const textOf = (name: string): string => readFileSync(join(import.meta.dirname, '..', name), 'utf8');
const notice = textOf('NOTICE.md');

test('every data set that carried a value has its notice, with version and licence', () => {
  for (const [key, { version, licence }] of Object.entries(dataSets)) {
    expect(notice, key).toContain(`## ${key}`);
    expect(notice, key).toContain(version);
    expect(notice, key).toContain(licence);
  }
});

test('every source code is listed, and no other', () => {
  const listed = [...notice.matchAll(/^\| `([\w-]+)` *\|/gm)].map(([, code]) => code);
  expect(listed.sort()).toEqual([...Object.keys(sources), ...Object.keys(hazardSources)].sort());
});
