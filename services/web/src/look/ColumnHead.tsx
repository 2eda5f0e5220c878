import { unitText } from '../server/lookup.ts';
import type { ShownQuantity } from '../server/types.ts';
import { Notation } from '../words/Notation.tsx';

interface ColumnHeadProps {
  /** 'rank' or a quantity */
  id: string;
  name: string;
  quantity?: ShownQuantity;
  currency?: string | undefined;
  order: string;
  direction: 'asc' | 'desc';
  onOrder: (order: string, direction: 'asc' | 'desc') => void;
}

/** The head of a column: symbol, name, unit; pressing it orders by the column, again the other way round. */
export function ColumnHead({ id, name, quantity, currency, order, direction, onOrder }: ColumnHeadProps) {
  const current = order === id;
  const sort = current ? (direction === 'asc' ? 'ascending' : 'descending') : 'none';
  const next = current && direction === 'asc' ? 'desc' : 'asc';
  return (
    <th scope="col" aria-sort={sort} className={id === 'rank' ? 'sticky-rank' : 'number'}>
      <button
        type="button"
        className="head-button"
        title={quantity?.meaning}
        onClick={() => onOrder(id, next)}
      >
        {quantity ? (
          <span className="head-symbol">
            <Notation text={quantity.symbol} />
          </span>
        ) : null}
        <span className={quantity ? 'head-words' : undefined}>{name}</span>
        <span className="head-arrow" aria-hidden="true">
          {current ? (direction === 'asc' ? '↑' : '↓') : ''}
        </span>
      </button>
      <span className="head-unit">{unitText(quantity?.unit ?? '', currency)}</span>
    </th>
  );
}
