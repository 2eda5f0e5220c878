import type { ShownQuantity } from '../server/types.ts';

interface QuantityChoiceProps {
  label: string;
  value: string;
  quantities: readonly ShownQuantity[];
  /** what the choice of no quantity is called, where there is one */
  none?: string;
  onChange: (id: string) => void;
}

/** Which quantity, out of all that the candidates have. */
export function QuantityChoice({ label, value, quantities, none, onChange }: QuantityChoiceProps) {
  return (
    <label className="row">
      {label}
      <select value={value} onChange={(event) => onChange(event.target.value)}>
        {none === undefined ? null : <option value="none">{none}</option>}
        {quantities.map(({ id, name, symbol }) => (
          <option key={id} value={id}>
            {name} {symbol.replace('_', '')}
          </option>
        ))}
      </select>
    </label>
  );
}
