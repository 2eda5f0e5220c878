import type { PairView } from '@tiegel/contract';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { DataRows } from '../table/DataRows.tsx';
import type { TableColumn } from '../table/tableColumn.ts';
import { useOrder } from '../useOrder.ts';

interface PairListProps {
  pairs: readonly PairView[];
  /** tells one choice of elements from another */
  selection: string;
  /** an element that stands first in each pair; null: as the pairs come */
  partnersOf: string | null;
}

/** Pairs as a list, the most attracted first; each leads to its equimolar alloy. */
export function PairList({ pairs, selection, partnersOf }: PairListProps) {
  const order = useOrder('mixingEnthalpy');
  const ends = ({ a, b }: PairView) => (b === partnersOf ? [b, a] : [a, b]);
  const words = { symbol: '', unit: '', meaning: '', holds: 'words', width: 12 } as const;
  const columns: TableColumn<PairView>[] = [
    { ...words, id: 'pair', name: 'Pair', value: (pair) => ends(pair).join('–') },
    {
      ...{ ...words, id: 'mixingEnthalpy', name: 'Enthalpy of mixing', symbol: 'H_ij', unit: 'kJ/mol' },
      holds: 'numbers',
      value: ({ mixingEnthalpy }) => mixingEnthalpy,
      cell: ({ mixingEnthalpy }) => formatNumber(mixingEnthalpy, 1),
    },
    {
      ...{ ...words, id: 'origin', name: 'From', width: 20 },
      value: (pair) => pair.import ?? 0,
      cell: (pair) =>
        pair.import === null
          ? 'the table of the project'
          : `your import ${pair.import}${pair.source ? `: ${pair.source}` : ''}`,
    },
  ];
  return (
    <div className="data-narrow-table">
      <DataRows
        caption="Pairs"
        columns={columns}
        rows={pairs}
        addressOf={({ a, b }) =>
          `/alloys/${[a, b]
            .sort()
            .map((symbol) => `${symbol}50`)
            .join('')}`
        }
        keyOf={({ a, b }) => `${a}-${b}`}
        selection={selection}
        {...order}
        onCard={2}
      />
    </div>
  );
}
