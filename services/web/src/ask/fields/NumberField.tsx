import type { ReactNode } from 'react';
import { FaultText } from '../faults/FaultText.tsx';
import { useFaultsAt } from '../faults/faultsContext.ts';

interface NumberFieldProps {
  /** place in the specification that the field writes */
  pointer: string;
  label: ReactNode;
  value: string;
  onChange: (text: string) => void;
  /** printed after the field */
  unit?: string;
  /** what holds where the field is empty */
  placeholder?: string;
  /** the label is only read aloud: the column or sentence around shows it */
  labelUnseen?: boolean;
  /** a table shows the fault in a line of its own */
  faultElsewhere?: boolean;
}

/** A field for a number, with comma or point, and what is wrong with it below. */
export function NumberField(props: NumberFieldProps) {
  const { pointer, label, value, onChange, unit, placeholder, labelUnseen, faultElsewhere } = props;
  const { id, described } = useFaultsAt(pointer);
  return (
    <span className="number-field">
      <label htmlFor={id} className={labelUnseen ? 'unseen' : undefined}>
        {label}
      </label>
      <span className="number-field-value">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          size={7}
          value={value}
          placeholder={placeholder}
          onChange={(event) => onChange(event.target.value)}
          {...described}
        />
        {unit ? <span className="quiet number-field-unit">{unit}</span> : null}
      </span>
      {faultElsewhere ? null : <FaultText pointer={pointer} />}
    </span>
  );
}
