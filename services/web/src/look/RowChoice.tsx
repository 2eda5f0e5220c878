import { type FormEvent, useState } from 'react';
import { formatCount } from '../numbers/formatNumber.ts';
import { parseNumber } from '../numbers/parseNumber.ts';

/** Rows beyond this are reached by number rather than by scrolling. */
const rowsToScroll = 5000;

interface RowChoiceProps {
  /** number of the first row shown, from 0 */
  at: number;
  kept: number;
  onChange: (at: number) => void;
}

/** Jumps to a row by its number, where there are many. */
export function RowChoice({ at, kept, onChange }: RowChoiceProps) {
  const [text, setText] = useState('');
  if (kept <= rowsToScroll && at === 0) return null;
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const parsed = parseNumber(text, { whole: true });
    if ('value' in parsed && parsed.value !== null)
      onChange(Math.min(kept, Math.max(1, Math.round(parsed.value))) - 1);
  };
  return (
    <form className="row" onSubmit={onSubmit}>
      <label className="row">
        Start at row
        <input
          type="text"
          inputMode="numeric"
          size={8}
          value={text}
          placeholder={formatCount(at + 1)}
          onChange={(event) => setText(event.target.value)}
        />
      </label>
      <button type="submit">Go</button>
      {at > 0 ? (
        <button type="button" onClick={() => onChange(0)}>
          To the first row
        </button>
      ) : null}
    </form>
  );
}
