import type { QuantityView } from '@tiegel/contract';
import { type RefObject, useState } from 'react';

interface InsertQuantityProps {
  field: RefObject<HTMLInputElement | null>;
  text: string;
  offered: readonly QuantityView[];
  onText: (text: string) => void;
}

/** Writes the id of a quantity, chosen by its name, where the caret stands in the formula. */
export function InsertQuantity({ field, text, offered, onText }: InsertQuantityProps) {
  const [chosen, setChosen] = useState(offered[0]?.id ?? '');
  const insert = () => {
    const input = field.current;
    const [start, end] = [input?.selectionStart ?? text.length, input?.selectionEnd ?? text.length];
    onText(text.slice(0, start) + chosen + text.slice(end));
    requestAnimationFrame(() => {
      input?.focus();
      input?.setSelectionRange(start + chosen.length, start + chosen.length);
    });
  };
  return (
    <span className="row">
      <select
        aria-label="Quantity to put in"
        value={chosen}
        onChange={(event) => setChosen(event.target.value)}
      >
        {offered.map(({ id, name, unit }) => (
          <option key={id} value={id}>
            {name === id ? id : `${name}: ${id}`}
            {unit ? `, ${unit}` : ''}
          </option>
        ))}
      </select>
      <button type="button" onClick={insert}>
        Put in
      </button>
    </span>
  );
}
