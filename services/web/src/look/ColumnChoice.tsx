import type { QuantityView } from '../server/types.ts';

interface ColumnChoiceProps {
  quantities: readonly QuantityView[];
  shown: readonly QuantityView[];
  onChange: (columns: string[] | null) => void;
}

/** Which quantities the table shows; the choice is kept for later results. */
export function ColumnChoice({ quantities, shown, onChange }: ColumnChoiceProps) {
  const ids = shown.map(({ id }) => id);
  return (
    <details className="column-choice">
      <summary>
        Columns ({shown.length} of {quantities.length})
      </summary>
      <fieldset className="row">
        <legend className="unseen">Columns of the table</legend>
        {quantities.map(({ id, name, symbol }) => (
          <label key={id} className="choice">
            <input
              type="checkbox"
              checked={ids.includes(id)}
              onChange={(event) =>
                onChange(event.target.checked ? [...ids, id] : ids.filter((one) => one !== id))
              }
            />
            {name} {symbol}
          </label>
        ))}
      </fieldset>
    </details>
  );
}
