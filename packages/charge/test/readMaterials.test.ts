import { ProblemError } from '@tiegel/contract';
import { describe, expect, test } from 'vitest';
import { readMaterials } from '../src/index.ts';

const head = 'material,contains,amounts,purity,price,currency,melting';
const faultsOf = (text: string) => {
  try {
    readMaterials(text);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ code, pointer }) => `${code} ${pointer}`);
    throw error;
  }
  return [];
};

test('elements, master alloys by weight and by atoms, with what is left out', () => {
  const { materials, currency } = readMaterials(
    `${head}\nMn flakes,,,99.7,3.40,EUR,\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\nAlNi,AlNi,at.%,,,,\n`,
  );
  expect(currency).toBe('EUR');
  expect(
    materials.map(({ name, purity, price, meltingTemperature }) => [name, purity, price, meltingTemperature]),
  ).toEqual([
    ['Mn flakes', 99.7, 3.4, null],
    ['FeNb66', 98.5, 40, 1853],
    ['AlNi', 100, null, null],
  ]);
  expect(materials[0]!.contains).toEqual({ Mn: 100 });
  expect(materials[1]!.contains.Nb).toBeCloseTo(66, 9);
  // By hand: 26.982 / (26.982 + 58.693) = 31.49 wt.% aluminium.
  expect(materials[2]!.contains.Al).toBeCloseTo(31.49, 2);
});

test('one column is enough, in any order with others', () => {
  expect(readMaterials('purity,material\n99,Ni\n').materials).toMatchObject([
    { name: 'Ni', purity: 99, price: null },
  ]);
});

describe('what is wrong is named with its row', () => {
  test.each([
    ['', 'materials/empty '],
    [head, 'materials/empty '],
    ['material;purity\nNi;99;\n', 'materials/unreadable /rows/0'],
    ['material;price;currency\nNi;1,250;EUR\n', 'request/wrong-value /rows/0/price'],
    [`${head}\n"Ni\n`, 'materials/unreadable '],
    [`${head}\nNi,99\n`, 'materials/unreadable /rows/0'],
    ['purity\n99\n', 'materials/column /header'],
    ['material,purty\nNi,99\n', 'materials/column /header'],
    ['material,material\nNi,Ni\n', 'materials/column /header'],
    // Copper is not cobalt.
    ['material\nCopper\n', 'materials/name /rows/0/name'],
    ['material\nNickel\n', 'materials/name /rows/0/name'],
    ['material,contains\nNi,Fe\n', 'materials/name /rows/0/name'],
    ['material,contains\nFeNb,Fe34Nb66\n', 'materials/amounts /rows/0/amounts'],
    ['material,contains,amounts\nFeNb,Fe34Nb66,%\n', 'request/wrong-value /rows/0/amounts'],
    ['material,contains,amounts\nNi,,wt%\n', 'request/wrong-value /rows/0/amounts'],
    ['material,contains,amounts\nNi,Ni,mol\n', 'request/wrong-value /rows/0/amounts'],
    ['material,contains,amounts\nFeXx,Fe34Xx66,wt.%\n', 'element/unknown /rows/0/contains'],
    ['material\nNi\nNi\n', 'materials/repeated /rows/1/material'],
    ['material,purity\nNi,"99,7"\n', 'request/wrong-value /rows/0/purity'],
    ['material,purity\nNi,101\n', 'request/wrong-value /rows/0/purity'],
    ['material,price\nNi,20\n', 'materials/currency /rows/0/currency'],
    ['material,price,currency\nNi,20,EUR\nFe,1,USD\n', 'materials/currency /rows/1/currency'],
    ['material,melting\nNi,-3\n', 'request/wrong-value /rows/0/melting'],
    [`material\n${'Ni\n'.repeat(201)}`, 'materials/too-large '],
    ['x'.repeat(100_001), 'materials/too-large '],
  ])('%j', (text, expected) => {
    expect(faultsOf(text)).toContain(expected);
  });

  test('all of it at once', () => {
    expect(faultsOf('material,purity\nNickel,99\nFe,0\nFe,99\n')).toHaveLength(2);
  });
});
