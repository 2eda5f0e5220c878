import { type FormEvent, useState } from 'react';
import { useKeptText } from '../../frame/useKeptText.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { parseNumber } from '../../numbers/parseNumber.ts';

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
  const [text, setText] = useKeptText(`row ${window.location.pathname}`);
  const [fault, setFault] = useState('');
  if (kept <= rowsToScroll && at === 0) return null;
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const parsed = parseNumber(text, { whole: true });
    const row = 'value' in parsed ? parsed.value : null;
    setFault(row === null ? `Write the number of a row, from 1 to ${formatCount(kept)}.` : '');
    if (row !== null) onChange(Math.min(kept, Math.max(1, Math.round(row))) - 1);
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
          aria-invalid={fault !== ''}
          aria-describedby="row-fault"
          onChange={(event) => setText(event.target.value)}
        />
      </label>
      <button type="submit">Go</button>
      <span role="alert" className="fault" id="row-fault">
        {fault}
      </span>
      {at > 0 ? (
        <button type="button" onClick={() => onChange(0)}>
          To the first row
        </button>
      ) : null}
    </form>
  );
}
