import { FaultText } from '../ask/faults/FaultText.tsx';
import { useFaultsAt } from '../ask/faults/faultsContext.ts';

interface TextFieldProps {
  /** place that the field writes */
  pointer: string;
  label: string;
  value: string;
  onChange: (text: string) => void;
  placeholder?: string;
}

/** A field for a word or two, with what is wrong with it below. */
export function TextField({ pointer, label, value, onChange, placeholder }: TextFieldProps) {
  const { id, described } = useFaultsAt(pointer);
  return (
    <span className="charge-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={value}
        placeholder={placeholder}
        onChange={(event) => onChange(event.target.value)}
        {...described}
      />
      <FaultText pointer={pointer} />
    </span>
  );
}
