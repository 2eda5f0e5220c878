import type { Facts, Limit, RankEntry } from '@tiegel/contract';
import type { Prepared } from '../src/index.ts';
import { logistic, type Sample } from './workloads.ts';

/** What plain.c can compute, in its order: six limits are the first of them, seven these and the tree, eight these and the others. */
const six = ['sizeMismatch', 'omega', 'valenceElectronConcentration', 'mixingEnthalpy', 'density', 'cost'];
const seven = [...six, 'tree'];
const eight = [...six, 'electronegativitySpread', 'solution'];
const columns = [
  'atomicMass',
  'density',
  'metallicRadius',
  'meltingTemperature',
  'valenceElectrons',
  'price',
  'paulingElectronegativity',
];

/** The search as plain.c reads it: numbers of the plan and its data, separated by white space. */
export function plainInput({ grid, plan, ranking }: Prepared, { oneIn, group }: Sample): string {
  const { specification, facts } = plan;
  return [
    [grid.symbols.length, grid.total!, oneIn, group, ranking.keep, ranking.prefer === 'high' ? 1 : 0],
    ...grid.symbols.map((_, element) => [
      grid.lowest[element]!,
      grid.highest[element]!,
      ...columns.map((column) => valueAt(facts, column, element)),
    ]),
    ...facts.pairs.mixingEnthalpy!.map((row) => row.map((value) => value ?? Number.NaN)),
    ...specification.limits.map((limit, at, all) =>
      limitLine(limit, (all.length === 7 ? seven : eight)[at]!),
    ),
    [...logistic],
    [specification.rank.length],
    ...specification.rank.map(rankLine),
  ]
    .map((line) => `${line.map(written).join(' ')}\n`)
    .join('');
}

function valueAt({ columns: of }: Facts, column: string, element: number): number {
  return of[column]![element]!;
}

function limitLine({ quantity, min = -Number.MAX_VALUE, max = Number.MAX_VALUE }: Limit, here: string) {
  if (quantity !== here) throw new RangeError(`The plain loop limits ${here} here.`);
  return [min, max];
}

function rankLine({ quantity, prefer, from = 0, to = 1, weight = 1, shape = 1 }: RankEntry) {
  return [six.indexOf(quantity), prefer === 'high' ? 1 : 0, from, to, weight, shape];
}

function written(value: number): string {
  if (Number.isNaN(value)) throw new RangeError('The plain loop needs every value.');
  return String(value);
}
