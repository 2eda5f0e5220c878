interface ChoicesProps<Value extends string> {
  legend: string;
  all: readonly Value[];
  chosen: readonly Value[];
  onChange: (chosen: Value[]) => void;
  /** what is printed for a value */
  say?: (value: Value) => string;
}

/** Several of a few, each a box to tick. */
export function Choices<Value extends string>({ legend, all, chosen, onChange, say }: ChoicesProps<Value>) {
  return (
    <fieldset className="melt-choices">
      <legend>{legend}</legend>
      {all.map((value) => (
        <label key={value} className="choice">
          <input
            type="checkbox"
            checked={chosen.includes(value)}
            onChange={(event) =>
              onChange(event.target.checked ? [...chosen, value] : chosen.filter((one) => one !== value))
            }
          />
          {say ? say(value) : value}
        </label>
      ))}
    </fieldset>
  );
}
