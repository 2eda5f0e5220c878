import type { ChangeEvent } from 'react';
import { useRef, useState } from 'react';
import { FaultList } from '../../frame/FaultList.tsx';
import type { Draft } from '../draft/draft.ts';
import { fileNameOf } from './fileNameOf.ts';
import './json.css';
import type { RequestedSpecification } from '../draft/specificationOf.ts';
import { useJsonText } from './useJsonText.ts';

interface JsonSectionProps {
  specification: RequestedSpecification;
  /** `opened`: the text came from a file */
  onApply: (draft: Draft, opened: boolean) => void;
}

/**
 * The specification as it is sent, beside the form: what is changed in one changes the other. A
 * text is checked by the server before the form takes it, so that nothing in it gets lost.
 */
export function JsonSection({ specification, onApply }: JsonSectionProps) {
  const { text, state, error, edit, drop } = useJsonText(specification, onApply);
  const [said, setSaid] = useState('');
  const file = useRef<HTMLInputElement>(null);
  const copy = async () => {
    await navigator.clipboard.writeText(text);
    setSaid('Copied.');
  };
  const download = () => {
    const address = URL.createObjectURL(new Blob([`${text}\n`], { type: 'application/json' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = fileNameOf(specification.name ?? '');
    link.click();
    URL.revokeObjectURL(address);
  };
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const [chosen] = event.target.files ?? [];
    event.target.value = '';
    if (!chosen) return;
    edit(await chosen.text(), true);
    setSaid(`From ${chosen.name}.`);
  };

  return (
    <details className="json">
      <summary>The specification as JSON</summary>
      <label htmlFor="specification-text" className="quiet small">
        The terminal (tiegel search) and POST /api/v1/searches take the same text. What you change here
        changes the form, and the other way round.
      </label>
      <textarea
        id="specification-text"
        className="mono specification-text"
        rows={Math.min(28, text.split('\n').length + 1)}
        spellCheck={false}
        value={text}
        aria-invalid={error ? true : undefined}
        aria-describedby="specification-state"
        onChange={(event) => {
          edit(event.target.value);
          setSaid('');
        }}
      />
      <p id="specification-state" role="status" className="small">
        {stateWords[state]} {said}
      </p>
      <FaultList inBackground error={error} what="The form is left as it is until the text is right." />
      <p className="row">
        {state === 'refused' || state === 'behind' ? (
          <button type="button" onClick={drop}>
            Back to what the form says
          </button>
        ) : null}
        <button type="button" onClick={copy}>
          Copy
        </button>
        <button type="button" onClick={download}>
          Download
        </button>
        <button type="button" onClick={() => file.current?.click()}>
          Open a file …
        </button>
        <input
          ref={file}
          type="file"
          accept=".json,application/json"
          aria-label="Specification file"
          onChange={open}
          hidden
        />
      </p>
    </details>
  );
}

const stateWords = {
  same: 'As the form says it.',
  checking: 'Checking …',
  taken: 'The form says the same.',
  refused: '',
  behind: 'The form was changed since; this text was not right, and was not taken.',
};
