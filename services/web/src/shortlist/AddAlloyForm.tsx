import type { ShortlistAct } from '@tiegel/contract';
import { ProblemError } from '@tiegel/contract/terms';
import { formatComposition, parseAlloy } from '@tiegel/elements';
import { useId, useState } from 'react';
import { useKeptText } from '../frame/useKeptText.ts';

interface AddAlloyFormProps {
  /** id of the shortlist */
  list: string;
  disabled: boolean;
  act: (act: ShortlistAct) => void;
}

/** Adds an alloy that somebody types. */
export function AddAlloyForm({ list, disabled, act }: AddAlloyFormProps) {
  const [text, setText] = useKeptText(`alloy ${list}`);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        const read = readAlloy(text);
        setWrong(read.wrong);
        if (read.entry === null) return;
        act({ kind: 'add', entry: read.entry });
        setText('');
      }}
    >
      <label htmlFor={id}>An alloy, at.%</label>
      <input
        id={id}
        size={26}
        value={text}
        maxLength={400}
        placeholder="Co20 Cr20 Fe20 Mn20 Ni20"
        aria-invalid={wrong !== null}
        aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        disabled={disabled}
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit" disabled={disabled || text.trim() === ''}>
        Add it
      </button>
      {wrong === null ? null : (
        <span id={`${id}-wrong`} role="alert" className="fault">
          {wrong}
        </span>
      )}
    </form>
  );
}

function readAlloy(text: string): { entry: string | null; wrong: string | null } {
  try {
    return { entry: formatComposition(parseAlloy(text)), wrong: null };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return { entry: null, wrong: error.faults.map(({ detail, remedy }) => `${detail} ${remedy}`).join(' ') };
  }
}
