import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { Notation } from '../../words/Notation.tsx';

interface ColumnHeadProps {
  /** 'rank' or a quantity */
  id: string;
  name: string;
  quantity?: ShownQuantity;
  currency?: string | undefined;
  order: string;
  direction: 'asc' | 'desc';
  /** null where the rows come in an order of their own */
  onOrder: ((order: string, direction: 'asc' | 'desc') => void) | null;
  /** of the cell; numbers stand at the end of theirs unless this says otherwise */
  className?: string;
}

/** The head of a column: symbol, name, unit; pressing it orders by the column, again the other way round. */
export function ColumnHead(props: ColumnHeadProps) {
  const { id, name, quantity, currency, order, direction, onOrder } = props;
  const { className = id === 'rank' ? 'sticky-rank' : 'number' } = props;
  const symbol = quantity?.symbol;
  const current = order === id;
  const sort = current ? (direction === 'asc' ? 'ascending' : 'descending') : 'none';
  const next = current && direction === 'asc' ? 'desc' : 'asc';
  const words = (
    <>
      {symbol ? (
        <span className="head-symbol">
          <Notation text={symbol} />
        </span>
      ) : null}
      <span className={symbol ? 'head-words' : undefined}>{name}</span>
    </>
  );
  return (
    <th scope="col" aria-sort={onOrder ? sort : undefined} className={className}>
      {onOrder ? (
        <button
          type="button"
          className="head-button"
          title={quantity?.meaning}
          onClick={() => onOrder(id, next)}
        >
          {words}
          <span className="head-arrow" aria-hidden="true">
            {current ? (direction === 'asc' ? '↑' : '↓') : ''}
          </span>
        </button>
      ) : (
        words
      )}
      <span className="head-unit">{unitText(quantity?.unit ?? '', currency)}</span>
    </th>
  );
}
