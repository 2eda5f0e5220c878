import { readFileSync } from 'node:fs';
import { importKinds } from '@tiegel/contract';
import { openStore } from '@tiegel/store';
import { expect, onTestFinished, test } from 'vitest';
import { candidateColumns, openImports } from '../../src/index.ts';

test('the examples in the README of the project are files that can be stored, one of each kind', () => {
  const text = readFileSync(new URL('../../../../README.md', import.meta.url), 'utf8');
  const examples = [...text.matchAll(/^`(\w+)`: [^`]*(?:`\w+`[^`]*)*```csv\n(.*?)```/gms)];
  expect(examples.map(([, kind]) => kind)).toEqual([...importKinds]);
  const store = openStore({ file: null, columns: candidateColumns });
  onTestFinished(() => store.close());
  const imports = openImports(store);
  for (const [at, [, , csv]] of examples.entries()) {
    const preview = imports.preview(importKinds[at]!, csv!);
    expect(preview).toMatchObject({ storable: true, counts: { refused: 0 } });
    expect(imports.enter(importKinds[at]!, csv!).rows).toBe(2);
  }
});
