import { useId } from 'react';
import { useKeptText } from '../../frame/useKeptText.ts';
import { entryText, parseNumber } from '../../numbers/parseNumber.ts';

interface GramFieldProps {
  label: string;
  value: number;
  onTake: (grams: number) => void;
}

/** A mass in g, above 0; what is no such thing is kept in the field and said. */
export function GramField({ label, value, onTake }: GramFieldProps) {
  const [text, setText, settled] = useKeptText(`${window.location.pathname} ${label}`, entryText(value));
  const id = useId();
  const read = parseNumber(text);
  const grams = 'value' in read ? read.value : null;
  const fault =
    'unclear' in read ? read.unclear : !(grams !== null && grams > 0) ? 'Write a mass above 0 g.' : null;
  return (
    <span className="condition">
      <label htmlFor={id}>{label}</label>
      <span>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          size={8}
          value={text}
          aria-invalid={fault !== null}
          aria-describedby={`${id}-fault`}
          onChange={(event) => {
            const now = parseNumber(event.target.value);
            if ('value' in now && now.value !== null && now.value > 0) {
              settled(event.target.value);
              onTake(now.value);
            } else setText(event.target.value);
          }}
        />{' '}
        g
      </span>
      <span id={`${id}-fault`} className="fault">
        {fault}
      </span>
    </span>
  );
}
