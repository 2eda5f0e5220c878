import { readdirSync } from 'node:fs';

const folder = new URL('../../fixtures/searches/', import.meta.url);

/** The pairs x.spec.json and x.expected.json of test/fixtures/searches: a new case is two files. */
export function searchFixtures(): { name: string; specification: URL; expected: URL }[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.spec.json'))
    .map((file) => file.replace('.spec.json', ''))
    .map((name) => ({
      name,
      specification: new URL(`${name}.spec.json`, folder),
      expected: new URL(`${name}.expected.json`, folder),
    }));
}
