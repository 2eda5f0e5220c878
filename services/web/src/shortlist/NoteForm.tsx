import type { ShortlistAct } from '@tiegel/contract';
import { shortlistMost } from '@tiegel/contract/terms';
import { useId } from 'react';
import { useKeptText } from '../frame/useKeptText.ts';

interface NoteFormProps {
  /** id of the shortlist: an alloy may stand on several, and what is written on one is not meant for another */
  list: string;
  entry: string;
  disabled: boolean;
  act: (act: ShortlistAct) => void;
}

/** A note to be written; what was typed survives a reload. */
export function NoteForm({ list, entry, disabled, act }: NoteFormProps) {
  const [text, setText] = useKeptText(`note ${list} ${entry}`);
  const id = useId();
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === '') return;
        act({ kind: 'note', entry, text: text.trim() });
        setText('');
      }}
    >
      <label htmlFor={id}>Note</label>
      <input
        id={id}
        className="short-note-field"
        value={text}
        maxLength={shortlistMost.note}
        disabled={disabled}
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit" disabled={disabled || text.trim() === ''}>
        Write it down
      </button>
    </form>
  );
}
