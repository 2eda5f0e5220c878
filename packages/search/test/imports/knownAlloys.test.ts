import { expect, test } from 'vitest';
import { knownAlloys } from '../../src/imports/knownAlloys.ts';

test('a text is found in a name whatever the case of its letters and their normal form', () => {
  const called = (name: string) => ({
    ...{ composition: { Fe: 50, Ni: 50 }, name, phases: null, process: null, doi: null, note: '', import: 1 },
  });
  const own = [called('Gefüge 7'.normalize('NFD')), called('Gefüge 7'.normalize('NFC')), called('Gefuge 7')];
  for (const form of ['NFC', 'NFD']) {
    const found = knownAlloys(own, { text: ' GEFÜGE '.normalize(form), own: true });
    expect(found.map(({ name }) => name.normalize('NFC'))).toEqual(['Gefüge 7', 'Gefüge 7']);
  }
});
