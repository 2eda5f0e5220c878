import { type ImportKind, importKinds, ProblemError } from '@tiegel/contract';
import { demoPrices } from '@tiegel/elements';
import { openStore, type Store } from '@tiegel/store';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { candidateColumns, openImports } from '../../src/index.ts';

const open: Store[] = [];
afterEach(() => {
  for (const store of open.splice(0)) store.close();
});
function imported() {
  const store = openStore({ file: null, columns: candidateColumns });
  open.push(store);
  return { store, imports: openImports(store) };
}

function codesOf(act: () => unknown): string[] {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code }) => code);
    throw error;
  }
  return [];
}

/** Good and bad rows of each kind; all invented. */
const files: Record<ImportKind, { header: string; rows: string[] }> = {
  prices: {
    header: 'symbol,pricePerKilogram,currency,date,source',
    rows: [
      'Al,2.50,EUR,2026-11-25,invented',
      'Ni,17,EUR,2026-11-25,invented',
      'Ni,18,EUR,2026-11-25,invented',
      'Co,30,USD,2026-11-25,invented',
      'Xx,1,EUR,2026-11-25,invented',
      'Fe,"1,2",EUR,2026-11-25,invented',
      'Cr,9,EUR',
    ],
  },
  column: {
    header: 'symbol,value,name,unit,mixing',
    rows: [
      'Al,237,Heat conduction,W/(m K),mole',
      'Ni,91,Heat conduction,W/(m K),mole',
      'Ni,92,,,',
      'Co,x,,,',
      'Cr,94,Other,,',
      'Fe,80,,,',
    ],
  },
  pairs: {
    header: 'a,b,mixingEnthalpy,source',
    rows: [
      'Al,Ni,-24,invented',
      'Ni,Al,-25,invented',
      'Co,Fe,2,',
      'Fe,Fe,1,',
      'Al,Xx,1,',
      'Al,Fe',
      'Cr,Fe,x,',
    ],
  },
  materials: {
    header: 'material,contains,amounts,purity,price,currency,melting',
    rows: [
      'Mn flakes,,,99.7,3.40,EUR,',
      'FeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853',
      'Ni,,,99.9,20,EUR,',
      'Ni,,,99.9,21,EUR,',
      'Co pieces,,,101,,,',
      'powder,,,,,,',
      'Cr,,,99,5,USD,',
      'Al,,',
    ],
  },
  alloys: {
    header: 'composition,name,phases,process,doi,note',
    rows: [
      'CoCrFeNi,trial,FCC,cast,,invented',
      'CoCrFeNi,trial,BCC,cast,,invented',
      'AlCoCrFeNi,,BCC+B2,cast,10.1000/1,',
      'CoXx,,,,,',
      'CoNi,,gamma,,,',
      'CoNi',
    ],
  },
};
const fileOf = (kind: ImportKind, rows: readonly string[]) => `${[files[kind].header, ...rows].join('\n')}\n`;

test('the fate that a preview tells of each row is what storing the file does, for any mix of rows', () => {
  const kindAndRows = fc.constantFrom(...importKinds).chain((kind) =>
    fc.record({
      kind: fc.constant(kind),
      before: fc.subarray(files[kind].rows),
      rows: fc.shuffledSubarray(files[kind].rows, { minLength: 1 }),
    }),
  );
  const { store, imports } = imported();
  /** Some of a file is there already, where it can be, and nothing else. */
  const begin = (kind: ImportKind, before: readonly string[]) => {
    for (const one of importKinds) {
      for (const { number } of store.imports.standing(one)) imports.withdraw(number);
    }
    if (imports.preview(kind, fileOf(kind, before)).storable) imports.enter(kind, fileOf(kind, before));
  };
  fc.assert(
    fc.property(kindAndRows, ({ kind, before, rows }) => {
      begin(kind, before);
      const stored = store.imports.list();
      const text = fileOf(kind, rows);
      const preview = imports.preview(kind, text);
      expect(store.imports.list()).toEqual(stored);
      expect(preview.rows.map(({ text: row }) => row.replaceAll('"', ''))).toEqual(
        rows.map((row) => row.replaceAll('"', '')),
      );
      for (const { fate, faults, before: was } of preview.rows) {
        expect(fate === 'refused').toBe(faults.length > 0);
        expect(was === null).toBe(fate === 'new' || fate === 'refused');
      }
      expect(preview.storable).toBe(preview.counts.refused === 0);
      if (!preview.storable) {
        const codes = codesOf(() => imports.enter(kind, text));
        const told = [...preview.faults, ...preview.rows.flatMap(({ faults }) => faults)];
        expect(codes).toEqual(['import/refused', ...told.map(({ code }) => code)]);
        expect(store.imports.list()).toEqual(stored);
      } else {
        const version = imports.enter(kind, text);
        expect(version).toMatchObject({ rows: rows.length, counts: preview.counts, inForce: true });
      }
      // Each row that is not refused has the same fate in a file without those that are.
      const good = preview.rows.flatMap(({ fate }, at) => (fate === 'refused' ? [] : [rows[at]!]));
      begin(kind, before);
      const rest = imports.preview(kind, fileOf(kind, good));
      if (good.length > 0 && rest.storable) {
        expect(rest.rows.map(({ fate }) => fate)).toEqual(
          preview.rows.map(({ fate }) => fate).filter((fate) => fate !== 'refused'),
        );
        // What was stored is then the same.
        imports.enter(kind, fileOf(kind, good));
        const again = imports.preview(kind, fileOf(kind, good));
        expect(again.counts).toEqual({ new: 0, changed: 0, same: good.length, refused: 0 });
        expect(again.lost).toEqual([]);
        // And its file reads as itself.
        const { csv } = imports.view(imports.list(kind)[0]!.number);
        expect(imports.preview(kind, csv).counts).toEqual(again.counts);
      }
    }),
    { numRuns: 100 },
  );
});

test('of prices the newest that stands is in force, and withdrawing gives back what was before', () => {
  const { imports } = imported();
  const [one, two] = ['Al,2,EUR,2026-11-25,a', 'Al,3,EUR,2026-11-25,b'].map((row) =>
    imports.enter('prices', fileOf('prices', [row])),
  );
  expect(one!.counts).toEqual({ new: 0, changed: 1, same: 0, refused: 0 });
  expect(imports.prices()!.prices.Al!.pricePerKilogram).toBe(3);
  expect(imports.list('prices').map(({ inForce }) => inForce)).toEqual([true, false]);
  expect(imports.withdraw(two!.number)).toMatchObject({ inForce: false });
  expect(imports.prices()!.prices.Al!.pricePerKilogram).toBe(2);
  expect(imports.restore(two!.number).inForce).toBe(true);
  imports.removePrices();
  expect(imports.prices()).toEqual(demoPrices);
  expect(imports.list().every(({ withdrawnAt }) => withdrawnAt !== null)).toBe(true);
});

test('a list that names fewer elements says what it would lose', () => {
  const { imports } = imported();
  imports.enter('prices', fileOf('prices', files.prices.rows.slice(0, 2)));
  expect(imports.preview('prices', fileOf('prices', files.prices.rows.slice(0, 1))).lost).toEqual([
    'Ni: 17 EUR/kg, 2026-11-25, invented',
  ]);
});

test('pairs, materials and alloys stand beside each other, the newest row of each', () => {
  const { imports } = imported();
  const first = imports.enter('pairs', fileOf('pairs', ['Al,Ni,-24,', 'Co,Fe,2,']), { name: ' mine ' });
  const second = imports.enter('pairs', fileOf('pairs', ['Ni,Al,-25,']));
  expect(first.name).toBe('mine');
  expect(
    imports.pairs().map(({ a, b, mixingEnthalpy, import: from }) => [a, b, mixingEnthalpy, from]),
  ).toEqual([
    ['Al', 'Ni', -25, second.number],
    ['Co', 'Fe', 2, first.number],
  ]);
  imports.enter('pairs', fileOf('pairs', ['Co,Fe,1,']));
  // Of the first nothing holds any more, though nobody withdrew it.
  expect(imports.list('pairs').at(-1)).toMatchObject({ inForce: false, withdrawnAt: null });
  imports.enter('materials', fileOf('materials', ['Ni,,,99.9,20,EUR,']));
  const nickel = imports.materials().filter(({ name }) => name === 'Ni');
  expect(nickel).toMatchObject([{ purity: 99.9, price: 20, currency: 'EUR', import: 4 }]);
  expect(imports.materials().find(({ name }) => name === 'Co')).toMatchObject({ import: null, purity: 100 });
});

test('a file without rows is refused as a whole, not by none of its rows', () => {
  expect(() => imported().imports.enter('prices', '')).toThrow(/^The file cannot be stored as it is, so/);
});

test('a column may not have the name of a quantity, and the whole file says so', () => {
  const { imports } = imported();
  const text = 'symbol,value,name,unit,mixing\nNi,1,Omega,,mole\n';
  const preview = imports.preview('column', text);
  expect(preview).toMatchObject({ storable: false, faults: [{ code: 'expression/name-taken' }] });
  expect(preview.rows.map(({ fate }) => fate)).toEqual(['refused']);
  expect(codesOf(() => imports.enter('column', text))).toEqual(['import/refused', 'expression/name-taken']);
});

test('an unknown number is refused', () => {
  const { imports } = imported();
  for (const act of [imports.view, imports.withdraw, imports.restore]) {
    expect(codesOf(() => act(7))).toEqual(['import/unknown']);
  }
});

test('a table whose first line states the separator says the same, on the lines of the file', () => {
  const { imports } = imported();
  const text = 'sep=;\r\nnote, ours;symbol;pricePerKilogram;currency;date;source\r\n';
  const rows = ['a;Al;2,5;EUR;2026-11-25;invented', 'b;Xx;1;EUR;2026-11-25;invented'];
  const told = imports.preview('prices', text + rows.join('\r\n')).rows;
  expect(told.map(({ line, fate }) => [line, fate])).toEqual([
    [3, 'changed'],
    [4, 'refused'],
  ]);
});

test('a row without anything in it is none, and no row after it is told of another', () => {
  const { imports } = imported();
  const rows = ['Al,2.5,EUR,2026-11-25,x', ',,,,', 'Ni,3,EUR,2026-11-25,x'];
  const textOf = (last: string) =>
    ['symbol,pricePerKilogram,currency,date,source', ...rows, last, ',,,,'].join('\n');
  const told = (last: string) =>
    imports.preview('prices', textOf(last)).rows.map(({ line, text, fate }) => [line, text, fate]);
  expect(told('')).toEqual([
    [2, rows[0], 'changed'],
    [4, rows[2], 'changed'],
  ]);
  expect(told('Xx,3,EUR,2026-11-25,x').at(-1)).toEqual([5, 'Xx,3,EUR,2026-11-25,x', 'refused']);
  expect(imports.preview('prices', textOf('')).storable).toBe(true);
});
