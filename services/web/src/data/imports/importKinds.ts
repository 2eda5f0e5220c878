import type { ImportKind } from '@tiegel/contract';

/** What can be brought in: its name, what it changes, and how its rows are written. */
export interface KindInWords {
  id: ImportKind;
  name: string;
  /** one of them, in a sentence */
  one: string;
  /** what is in force after several */
  rule: string;
  /** each column of the CSV with what stands in it */
  columns: readonly (readonly [name: string, holds: string])[];
  /** rows as they could stand in a file; invented */
  example: string;
}

/** Every kind, in the order in which it is offered. */
export const importKinds: readonly KindInWords[] = [
  {
    id: 'prices',
    name: 'Prices of elements',
    one: 'price list',
    rule: 'One list is in force: the newest that was not withdrawn.',
    columns: [
      ['symbol', 'of the element'],
      ['pricePerKilogram', 'of the pure element'],
      ['currency', 'three letters, one in the whole list'],
      ['date', 'ISO, as in 2026-11-25'],
      ['source', 'where the price comes from'],
    ],
    example:
      'symbol,pricePerKilogram,currency,date,source\nFe,1.20,EUR,2026-11-25,invented offer\nNi,18.50,EUR,2026-11-25,invented offer\n',
  },
  {
    id: 'column',
    name: 'A column of element values',
    one: 'element column',
    rule: 'One column of each name is in force: the newest that was not withdrawn.',
    columns: [
      ['symbol', 'of the element'],
      ['value', 'a number'],
      ['name', 'of the column, in the first row'],
      ['unit', 'in the first row; empty for a plain number'],
      ['mixing', 'mole, mass or volume: by what it is averaged, in the first row'],
    ],
    example: 'symbol,value,name,unit,mixing\nFe,52,invented hardness,HV,mole\nNi,64,,,\n',
  },
  {
    id: 'pairs',
    name: 'Enthalpies of pairs',
    one: 'list of pairs',
    rule: 'Of each pair the newest value holds; every other pair keeps that of the project.',
    columns: [
      ['a', 'symbol of one element'],
      ['b', 'symbol of the other'],
      ['mixingEnthalpy', 'of the equimolar binary, kJ/mol'],
      ['source', 'where the value comes from'],
    ],
    example: 'a,b,mixingEnthalpy,source\nFe,Ni,-2.5,invented\nAl,Ni,-24,invented\n',
  },
  {
    id: 'materials',
    name: 'Raw materials',
    one: 'list of materials',
    rule: 'Of each name the newest material holds.',
    columns: [
      ['material', 'a name that begins with a symbol, as in Mn flakes'],
      ['contains', 'a master alloy such as Fe34Nb66; empty for a pure element'],
      ['amounts', 'at.% or wt.%, of what the amounts of a master alloy are'],
      ['purity', 'wt.% that is metal; 100 where empty'],
      ['price', 'per kg of the material; empty: unknown'],
      ['currency', 'three letters, one in the whole list'],
      ['melting', 'melting temperature, K; empty: unknown'],
    ],
    example:
      'material,contains,amounts,purity,price,currency,melting\nMn flakes,,,99.7,3.40,EUR,\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\n',
  },
  {
    id: 'alloys',
    name: 'Alloys from the literature or your own',
    one: 'list of alloys',
    rule: 'All lists that were not withdrawn are in force together.',
    columns: [
      ['composition', 'at.% or ratios, as in CoCrFeMnNi or Al10Co90'],
      ['name', 'as you call it; may be empty'],
      ['phases', 'as observed, as in FCC or FCC+B2'],
      ['process', 'how it was made, as in cast or annealed at 1473 K'],
      ['doi', 'of the publication; empty for your own'],
      ['note', 'anything else'],
    ],
    example:
      'composition,name,phases,process,doi,note\nCoCrFeNi,invented trial 1,FCC,cast,,\nAl20Co20Cr20Fe20Ni20,invented trial 2,BCC+B2,cast,,\n',
  },
];

/** The kind of that id; the first one for any other word. */
export function kindOf(id: string | null): KindInWords {
  return importKinds.find((kind) => kind.id === id) ?? importKinds[0]!;
}
