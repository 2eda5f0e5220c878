import { useId } from 'react';

interface SearchFieldProps {
  label: string;
  value: string;
  placeholder: string;
  onChange: (text: string) => void;
  width?: number;
}

/** A field that narrows a list while it is typed; what is typed stands in the address. */
export function SearchField({ label, value, placeholder, onChange, width = 24 }: SearchFieldProps) {
  const id = useId();
  return (
    <span className="data-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="search"
        autoComplete="off"
        spellCheck={false}
        size={width}
        value={value}
        placeholder={placeholder}
        onChange={(event) => onChange(event.target.value)}
      />
    </span>
  );
}
