import type { QuantityView } from '../server/types.ts';
import { FaultText } from './FaultText.tsx';
import { useFaultsAt } from './faultsContext.ts';

interface QuantitySelectProps {
  pointer: string;
  label: string;
  value: string;
  quantities: readonly QuantityView[];
  onChange: (quantity: string) => void;
}

/** Chooses one of the quantities by symbol and name. */
export function QuantitySelect({ pointer, label, value, quantities, onChange }: QuantitySelectProps) {
  const { id, described } = useFaultsAt(pointer);
  return (
    <span className="number-field">
      <label htmlFor={id} className="unseen">
        {label}
      </label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)} {...described}>
        {quantities.map((quantity) => (
          <option key={quantity.id} value={quantity.id}>
            {quantity.name} {quantity.symbol}
          </option>
        ))}
      </select>
      <FaultText pointer={pointer} />
    </span>
  );
}
