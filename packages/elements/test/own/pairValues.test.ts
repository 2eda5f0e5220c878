import { ProblemError } from '@tiegel/contract';
import { expect, test } from 'vitest';
import {
  dataVersionOf,
  factsFor,
  pairEnthalpy,
  pairRecords,
  pairValuesCsv,
  readPairValues,
} from '../../src/index.ts';

const faultsOf = (text: string) => {
  try {
    readPairValues(text);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
  return [];
};

// Invented values.
const text = 'source,b,a,mixingEnthalpy\n"a melt, invented",Al,Ni,-24.5\n,Fe,Co,3e0\n';

test('pairs are read in any order of columns and of elements, and written as they read', () => {
  const values = readPairValues(text);
  expect(values).toEqual([
    { a: 'Al', b: 'Ni', mixingEnthalpy: -24.5, source: 'a melt, invented' },
    { a: 'Co', b: 'Fe', mixingEnthalpy: 3, source: '' },
  ]);
  expect(readPairValues(pairValuesCsv(values))).toEqual(values);
});

test('rows that were copied from a spreadsheet are read, with their decimal commas', () => {
  const read = (separator: string) =>
    readPairValues('a;b;mixingEnthalpy\nAl;Ni;-24,5\n'.replaceAll(';', separator))[0]!.mixingEnthalpy;
  expect([read(';'), read('\t')]).toEqual([-24.5, -24.5]);
});

test('all faults come at once, each with its place', () => {
  const wrong = 'a,b,mixingEnthalpy,source\nAl,Ni,"-24,5",\nNi,Al,1,\nFe,Fe,1,\nXx,Ni,1001,\nAl\n';
  expect(faultsOf(wrong).map(({ code, pointer }) => [code, pointer])).toEqual([
    ['import/unreadable', '/rows/4'],
    ['request/wrong-value', '/rows/0/mixingEnthalpy'],
    ['request/wrong-value', '/rows/2/b'],
    ['element/unknown', '/rows/3/a'],
    ['request/wrong-value', '/rows/3/mixingEnthalpy'],
    ['import/repeated', '/rows/1'],
  ]);
});

test('a file that is no such table is refused as a whole', () => {
  const codes = (wrong: string) => faultsOf(wrong).map(({ code }) => code);
  expect(codes('')).toEqual(['import/empty']);
  expect(codes('a,b,mixingEnthalpy\n')).toEqual(['import/empty']);
  expect(codes('a,b,mixingEnthalpy\n"Al')).toEqual(['import/unreadable']);
  expect(codes('a,a,enthalpy\nAl,Ni,1')).toEqual(Array(4).fill('import/header'));
  expect(codes(`a,b,mixingEnthalpy\n${'Al,Ni,1\n'.repeat(2001)}`)).toEqual(['import/too-large']);
  expect(codes('x'.repeat(1_000_001))).toEqual(['import/too-large']);
});

test('facts, records and the version of the data take them in the place of the project’s', () => {
  const own = readPairValues(text);
  const { symbols, pairs } = factsFor(['Al', 'Co', 'Fe', 'Ni'], { pairs: own });
  const of = (a: string, b: string) => pairs.mixingEnthalpy![symbols.indexOf(a)]![symbols.indexOf(b)];
  expect([of('Al', 'Ni'), of('Ni', 'Al'), of('Co', 'Fe')]).toEqual([-24.5, -24.5, 3]);
  expect(of('Al', 'Fe')).toBe(pairEnthalpy('Al', 'Fe'));
  const differing = pairRecords(own).filter(
    ({ a, b, mixingEnthalpy }) => pairEnthalpy(a, b) !== mixingEnthalpy,
  );
  expect(differing.map(({ a, b }) => [a, b].sort().join('-')).sort()).toEqual(['Al-Ni', 'Co-Fe']);
  expect(dataVersionOf(null, [], own)).not.toBe(dataVersionOf(null));
  // A value as the project has it is the same data, whatever is said of its source.
  const same = [{ a: 'Al', b: 'Ni', mixingEnthalpy: pairEnthalpy('Al', 'Ni')!, source: 'measured again' }];
  expect(dataVersionOf(null, [], same)).toBe(dataVersionOf(null));
});
