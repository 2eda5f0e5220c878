import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import { useKeptText } from '../../frame/useKeptText.ts';
import '../alloy.css';
import { alloyQuestion } from './alloyQuestion.ts';
import { readAlloyText } from './readAlloyText.ts';

interface AlloyEntryProps {
  /** what stands in the field at first */
  text?: string;
  /** what happens with the canonical text; the page of the alloy opens if left out */
  onTake?: (text: string) => void;
  label?: string;
  action?: string;
}

/**
 * A field for an alloy as people write it; says what is wrong with it when it is sent, and asks once
 * where it may mean another alloy than was read: sent again, it is taken. A reload keeps what was typed.
 */
export function AlloyEntry({
  text: first = '',
  onTake,
  label = 'Alloy, at.%',
  action = 'Look at it',
}: AlloyEntryProps) {
  const [text, setText, settled] = useKeptText(`${window.location.pathname} ${label}`, first);
  const [faults, setFaults] = useState<readonly { detail: string; remedy: string }[]>([]);
  const [question, setQuestion] = useState('');
  const [, navigate] = useLocation();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readAlloyText(text);
    setFaults(read.faults ?? []);
    const asked = read.text === null ? '' : alloyQuestion(text);
    setQuestion(asked);
    if (read.text === null || asked !== question) return;
    setQuestion('');
    if (onTake) {
      onTake(read.text);
      settled('');
    } else {
      settled(text);
      navigate(`/alloys/${read.text}`);
    }
  };
  return (
    <form className="alloy-entry" onSubmit={submit}>
      <label htmlFor="alloy-entry">{label}</label>
      <div className="row">
        <input
          id="alloy-entry"
          size={36}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          placeholder="CoCrFeMnNi or Al10 Co30 Fe60"
          value={text}
          aria-invalid={faults.length > 0}
          aria-describedby="alloy-entry-faults"
          onChange={(event) => setText(event.target.value)}
        />
        <button type="submit">{action}</button>
      </div>
      <p className="small" role="status">
        {question === '' ? '' : `${question} Press ‘${action}’ again to take it so.`}
      </p>
      <div id="alloy-entry-faults" role="alert">
        {faults.map(({ detail, remedy }) => (
          <p key={detail} className="fault">
            {detail} {remedy}
          </p>
        ))}
      </div>
    </form>
  );
}
