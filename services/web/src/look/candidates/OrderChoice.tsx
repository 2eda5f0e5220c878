import type { ShownQuantity } from '../../server/types.ts';
import type { ViewState } from '../viewState.ts';

interface OrderChoiceProps {
  view: ViewState;
  quantities: readonly ShownQuantity[];
  onChange: (part: Partial<ViewState>) => void;
}

/** By what the candidates are ordered; the heads of the table do the same. */
export function OrderChoice({ view, quantities, onChange }: OrderChoiceProps) {
  return (
    <p className="row">
      <label className="row">
        Order by
        <select value={view.order} onChange={(event) => onChange({ order: event.target.value })}>
          <option value="rank">rank</option>
          {quantities.map(({ id, name, symbol }) => (
            <option key={id} value={id}>
              {name} {symbol}
            </option>
          ))}
        </select>
      </label>
      <select
        aria-label="Direction"
        value={view.direction}
        onChange={(event) => onChange({ direction: event.target.value as 'asc' | 'desc' })}
      >
        <option value="asc">lowest first</option>
        <option value="desc">highest first</option>
      </select>
    </p>
  );
}
