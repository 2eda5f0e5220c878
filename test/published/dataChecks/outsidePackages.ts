import { elements as massesAndNames } from 'chemical-elements';
import periodicTable from 'periodic-table/data.json' with { type: 'json' };
import { type CheckedData, disagreements, type NumberColumn, numberOf } from './checkedData.ts';

/** One number of the general-purpose package periodic-table 0.0.8; an empty text there is no number. */
interface OutsideRow {
  symbol: string;
  atomicNumber: number;
  name: string;
  atomicMass: string | number[];
  meltingPoint: number | '';
  boilingPoint: number | '';
  density: number | '';
  electronegativity: number | '';
}
const outsideRows = new Map((periodicTable as OutsideRow[]).map((row) => [row.symbol, row]));
const outsideMasses = new Map(massesAndNames.map((row) => [row.symbol, row]));

/** Where ours stands against periodic-table 0.0.8, and why. */
const excused = {
  atomicMass: {
    Li: 'theirs is 6.941, the weight before IUPAC gave an interval; ours is the conventional value 6.94',
    Ge: 'theirs is 72.64, before the revision of 2009; ours is 72.63',
    Mo: 'theirs is 95.96, before the revision of 2013; ours is 95.95',
  },
  density: {
    B: 'theirs is 2.46; rhombohedral boron has 2.34 (CRC)',
    Pr: 'theirs is 6.64 of an older list; the lattice parameters give 6.77 (CRC)',
    Sm: 'theirs is 7.353 of an older list; the lattice parameters give 7.52 (CRC)',
    Yb: 'theirs is 6.57 of an older list; the lattice parameter gives 6.9 (CRC)',
  },
  meltingTemperature: {
    C: 'graphite sublimes at 1 atm; theirs is of graphite under pressure',
    Er: 'theirs is 1770 K of an older list; ours is 1529 °C (CRC)',
  },
  boilingTemperature: {
    C: 'theirs is 4300 K; ours is the sublimation point of CRC, 3825 °C',
    Si: 'theirs is 3173 K of an older list; ours is 3265 °C (CRC)',
    Cu: 'theirs is 3200 K of an older list; ours is 2560 °C (CRC)',
    Pr: 'theirs is 3563 K of an older list; ours is 3520 °C (CRC)',
  },
  paulingElectronegativity: {
    Tb: 'theirs is 1.2; no value was published, ours is the estimate of our source',
  },
};

const outsideNumber = (value: unknown): number =>
  value === '' ? Number.NaN : Number.parseFloat(String(value));

function against(
  data: CheckedData,
  column: NumberColumn & keyof typeof excused,
  tolerance: number,
  expectedOf: (row: OutsideRow) => unknown,
): string[] {
  const rows = data.elements.map((element) => ({
    symbol: element.symbol,
    found: numberOf(element, column),
    expected: outsideNumber(expectedOf(outsideRows.get(element.symbol)!)),
  }));
  return disagreements(`${column} (periodic-table)`, tolerance, rows, excused[column]);
}

/** Mass 0.01 %, density 2 %, melting 1 %, boiling 3 %, Pauling electronegativity 1 % of the outside value. */
export function outsidePackages(data: CheckedData): string[] {
  return [
    ...against(data, 'atomicMass', 1e-4, (row) => row.atomicMass),
    ...against(data, 'density', 0.02, (row) => row.density),
    ...against(data, 'meltingTemperature', 0.01, (row) => row.meltingPoint),
    ...against(data, 'boilingTemperature', 0.03, (row) => row.boilingPoint),
    ...against(data, 'paulingElectronegativity', 0.01, (row) => row.electronegativity),
    ...secondMasses(data),
    ...names(data),
  ];
}

/** chemical-elements 2.3.3 adds masses up from the isotopes. */
function secondMasses(data: CheckedData): string[] {
  const rows = data.elements.map((element) => ({
    symbol: element.symbol,
    found: numberOf(element, 'atomicMass'),
    expected: outsideMasses.get(element.symbol)?.mass ?? Number.NaN,
  }));
  return disagreements('atomicMass (chemical-elements)', 1e-4, rows, {
    Mo: 'theirs adds up to 95.9598; IUPAC has 95.95 since 2013',
  });
}

function names({ elements }: CheckedData): string[] {
  return elements
    .filter(({ symbol, atomicNumber, name }) => {
      const outside = outsideMasses.get(symbol);
      return outside?.number !== atomicNumber || outside.name !== name;
    })
    .map(({ symbol }) => `${symbol}: name or atomic number is not that of chemical-elements`);
}
