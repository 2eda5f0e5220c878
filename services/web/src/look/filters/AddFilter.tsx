import { type FormEvent, useState } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { parseNumber } from '../../numbers/parseNumber.ts';
import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import type { Filters } from './filters.ts';

interface AddFilterProps {
  filters: Filters;
  pool: readonly string[];
  quantities: readonly ShownQuantity[];
  currency: string | undefined;
  among: string;
  onChange: (filters: Filters) => void;
}

const noRange = { min: '', max: '' };

/** A line that adds a filter: a range of a quantity, or an element that must or must not be there. */
export function AddFilter({ filters, pool, quantities, currency, among, onChange }: AddFilterProps) {
  const [typed, setTyped] = useKept(`filter ${window.location.pathname}`, {
    what: quantities[0]?.id ?? 'has',
    symbol: pool[0] ?? '',
    ...noRange,
  });
  const { what, symbol, ...range } = typed;
  const [fault, setFault] = useState('');
  const quantity = quantities.find(({ id }) => id === what);

  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const next = quantity
      ? withRange(filters, quantity.id, range)
      : withSymbol(filters, what as 'has' | 'without', symbol);
    if (typeof next === 'string') return setFault(next);
    setFault('');
    setTyped({ ...typed, ...noRange });
    onChange(next);
  };

  return (
    <form className="row add-filter" aria-label="Add a filter" onSubmit={onSubmit}>
      <label className="row">
        Show only
        <select value={what} onChange={(event) => setTyped({ ...typed, what: event.target.value })}>
          <optgroup label="Quantity">
            {quantities.map(({ id, name, symbol: sign }) => (
              <option key={id} value={id}>
                {name} {sign}
              </option>
            ))}
          </optgroup>
          <optgroup label="Element">
            <option value="has">with the element</option>
            <option value="without">without the element</option>
          </optgroup>
        </select>
      </label>
      {quantity ? (
        (['min', 'max'] as const).map((edge) => (
          <label key={edge} className="row">
            {edge === 'min' ? 'at least' : 'at most'}
            <input
              type="text"
              inputMode="decimal"
              size={7}
              value={range[edge]}
              aria-invalid={fault ? true : undefined}
              aria-describedby={fault ? 'filter-fault' : undefined}
              onChange={(event) => setTyped({ ...typed, [edge]: event.target.value })}
            />
          </label>
        ))
      ) : (
        <select
          aria-label="Element"
          value={symbol}
          onChange={(event) => setTyped({ ...typed, symbol: event.target.value })}
        >
          {pool.map((one) => (
            <option key={one}>{one}</option>
          ))}
        </select>
      )}
      {quantity?.unit ? <span className="quiet">{unitText(quantity.unit, currency)}</span> : null}
      <button type="submit">Add filter</button>
      <span className="quiet">{among}</span>
      <span role="alert" className="fault" id="filter-fault">
        {fault}
      </span>
    </form>
  );
}

/** The filters with one more range, or what is wrong with it. */
function withRange(
  filters: Filters,
  quantity: string,
  texts: { min: string; max: string },
): Filters | string {
  const parsed = { min: parseNumber(texts.min), max: parseNumber(texts.max) };
  for (const one of [parsed.min, parsed.max]) if ('unclear' in one) return one.unclear;
  const min = 'value' in parsed.min ? parsed.min.value : null;
  const max = 'value' in parsed.max ? parsed.max.value : null;
  if (min === null && max === null) return 'Write a smallest value, a largest one or both.';
  if (min !== null && max !== null && min > max)
    return 'The smallest value is above the largest one: lower the first or raise the second.';
  const others = filters.ranges.filter((range) => range.quantity !== quantity);
  const range = { quantity, ...(min === null ? {} : { min }), ...(max === null ? {} : { max }) };
  return { ...filters, ranges: [...others, range] };
}

function withSymbol(filters: Filters, key: 'has' | 'without', symbol: string): Filters {
  const other = key === 'has' ? 'without' : 'has';
  return {
    ...filters,
    [key]: [...filters[key].filter((one) => one !== symbol), symbol].sort(),
    [other]: filters[other].filter((one) => one !== symbol),
  };
}
