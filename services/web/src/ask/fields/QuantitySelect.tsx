import { FaultText } from '../faults/FaultText.tsx';
import { useFaultsAt } from '../faults/faultsContext.ts';

interface QuantitySelectProps {
  pointer: string;
  label: string;
  value: string;
  quantities: readonly { id: string; name: string; symbol: string }[];
  onChange: (quantity: string) => void;
}

/** Chooses one of the quantities by symbol and name, or an expression of one's own by its name. */
export function QuantitySelect({ pointer, label, value, quantities, onChange }: QuantitySelectProps) {
  const { id, described } = useFaultsAt(pointer);
  const isOwn = (one: { id: string; name: string }) => one.id === one.name;
  const own = quantities.filter(isOwn);
  return (
    <span className="number-field">
      <label htmlFor={id} className="unseen">
        {label}
      </label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)} {...described}>
        {quantities
          .filter((one) => !isOwn(one))
          .map((quantity) => (
            <option key={quantity.id} value={quantity.id}>
              {quantity.name} {quantity.symbol}
            </option>
          ))}
        {own.length > 0 ? (
          <optgroup label="Expressions of one’s own">
            {own.map((quantity) => (
              <option key={quantity.id} value={quantity.id}>
                {quantity.id}
              </option>
            ))}
          </optgroup>
        ) : null}
        {/* A name that nothing has (any more) stays to be seen and changed. */}
        {quantities.some((quantity) => quantity.id === value) ? null : <option value={value}>{value}</option>}
      </select>
      <FaultText pointer={pointer} />
    </span>
  );
}
