import type { Candidate } from '@tiegel/contract';
import { effectivePool } from '@tiegel/contract/terms';
import { formatComposition } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import type { ExportHead } from '../searches.ts';

/** One column of a table of candidates. `unit` is '' for what has none. */
export interface ExportColumn {
  name: string;
  unit: string;
  type: 'INT32' | 'STRING' | 'DOUBLE';
  value: (candidate: Candidate) => number | string | null;
}

/** 1 for members of the Pareto front, else 0. */
const frontMark: ExportColumn = {
  name: 'front',
  unit: '',
  type: 'INT32',
  value: ({ front }) => Number(front ?? false),
};

/**
 * The columns of every table of candidates, in order: rank, the composition as one canonical
 * text, an amount in at.% (0 where absent) for each element of the pool, the quantities, the
 * score (in the unit of the ranked quantity, or 0 to 1 of a combined ranking), and where the search
 * asked for a Pareto front, who is on it.
 */
export function exportColumns({ search, columns }: ExportHead): ExportColumn[] {
  return [
    { name: 'rank', unit: '', type: 'INT32', value: ({ rank }) => rank },
    {
      name: 'composition',
      unit: 'at.%',
      type: 'STRING',
      value: ({ composition }) => formatComposition(composition),
    },
    ...effectivePool(search.specification.elements).map(
      (symbol): ExportColumn => ({
        name: symbol,
        unit: 'at.%',
        type: 'DOUBLE',
        value: ({ composition }) => composition[symbol] ?? 0,
      }),
    ),
    ...quantityColumns({ search, columns }),
    { name: 'score', unit: '', type: 'DOUBLE', value: ({ score }) => score },
    ...(search.specification.front ? [frontMark] : []),
  ];
}

/** A column for each quantity that the search stored. */
export function quantityColumns({ search, columns }: ExportHead): ExportColumn[] {
  const currency = search.prices?.currency ?? 'currency';
  return columns.map((id) => ({
    name: id,
    unit: unitOf(id, search).replace('currency', currency),
    type: 'DOUBLE',
    value: (candidate) => candidate.quantities[id] ?? null,
  }));
}

/** The head of a column in a text: its name with its unit. */
export function headOf({ name, unit }: ExportColumn): string {
  return unit === '' ? name : `${name} (${unit})`;
}

function unitOf(id: string, { moreQuantities }: ExportHead['search']): string {
  return [...quantities, ...moreQuantities].find((quantity) => quantity.id === id)?.unit ?? '';
}
