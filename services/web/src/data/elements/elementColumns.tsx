import type { OwnColumnView } from '@tiegel/contract';
import { type ColumnId, columns, type SourceCode, sources } from '@tiegel/elements';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { propertyDecimals } from '../../periodic/elementProperties.ts';
import { unitText } from '../../server/lookup.ts';
import type { ElementView } from '../../server/types.ts';
import type { TableColumn } from '../table/tableColumn.ts';

const miedemaDecimals: Record<string, number> = {
  miedemaPotential: 2,
  miedemaElectronDensity: 2,
  miedemaSurface: 1,
  miedemaHybridisation: 1,
  miedemaVolume: 2,
  miedemaTransformation: 0,
};

/** Decimals of a column of elements that mean something. */
export function decimalsOf(id: string): number {
  return propertyDecimals[id] ?? miedemaDecimals[id] ?? 2;
}

const narrowest = 6.5; // rem

/** The columns of the table of elements: name and place, every value with its unit, own columns, price, hazards. */
export function elementColumns(
  own: readonly OwnColumnView[],
  currency: string | undefined,
): TableColumn<ElementView>[] {
  const words = { symbol: '', unit: '', meaning: '', holds: 'words' } as const;
  const numbers = { symbol: '', unit: '', meaning: '', holds: 'numbers' } as const;
  return [
    {
      ...{ ...words, id: 'symbol', name: 'Element', width: 11, value: ({ symbol }) => symbol },
      cell: ({ symbol, name }) => (
        <>
          <b className="data-symbol">{symbol}</b> {name}
        </>
      ),
    },
    {
      ...numbers,
      id: 'atomicNumber',
      name: 'Number',
      symbol: 'Z',
      width: 5,
      value: (one) => one.atomicNumber,
    },
    { ...words, id: 'family', name: 'Family', width: 10, value: ({ family }) => family },
    ...columns.map(
      (column): TableColumn<ElementView> => ({
        ...column,
        unit: unitText(column.unit, null),
        width: Math.max(narrowest, column.name.length * 0.28 + 2.5),
        value: (element) => element[column.id],
        cell: (element) => <Value element={element} column={column.id} />,
      }),
    ),
    ...own.map(
      (column): TableColumn<ElementView> => ({
        ...{ ...numbers, id: column.id, name: `${column.name} (yours)`, unit: unitText(column.unit, null) },
        ...{ width: 8, value: ({ symbol }) => column.values[symbol] ?? null },
        cell: ({ symbol }) => formatNumber(column.values[symbol], decimalsIn(Object.values(column.values))),
      }),
    ),
    {
      ...{ ...numbers, id: 'price', name: 'Price', symbol: 'p', unit: unitText('currency/kg', currency) },
      ...{ width: 7, value: ({ price }) => price },
      cell: ({ price }) => formatNumber(price, 2),
    },
    {
      ...{ ...words, id: 'hazards', name: 'Hazards in handling', width: 22 },
      value: ({ hazards }) => kindsOf(hazards) || null,
      cell: ({ hazards }) => (
        <span className="data-clamped">{kindsOf(hazards) || 'none on record here'}</span>
      ),
    },
  ];
}

/** As many decimals as values were written with, four at most. */
export function decimalsIn(values: readonly number[]): number {
  const digits = values.map((value) => String(value).split('.')[1]?.length ?? 0);
  return Math.min(4, Math.max(0, ...digits));
}

function kindsOf(hazards: ElementView['hazards']): string {
  return [...new Set(hazards.map(({ kind }) => kind))].join(', ');
}

/** The source of a value where it is another than that of its column. */
function deviation(element: ElementView, column: ColumnId): SourceCode | null {
  const source = element.sources[column];
  return source === columns.find(({ id }) => id === column)!.source ? null : source;
}

function Value({ element, column }: { element: ElementView; column: ColumnId }) {
  const value = element[column];
  if (value === null || typeof value === 'string') return value ?? formatNumber(null, 0);
  const other = deviation(element, column);
  return (
    <>
      {formatNumber(value, decimalsOf(column))}
      {other ? <abbr title={sources[other].text}>°</abbr> : <span className="data-no-mark" />}
    </>
  );
}
