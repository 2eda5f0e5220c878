import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { post } from '../server/request.ts';
import type { Draft } from './draft.ts';
import { type AcceptedSpecification, draftOf } from './draftOf.ts';
import type { RequestedSpecification } from './specificationOf.ts';

interface JsonSectionProps {
  specification: RequestedSpecification;
  onApply: (draft: Draft) => void;
}

/**
 * The specification as it is sent, to be copied, kept as a file or written by hand. A text that
 * is put in is checked by the server before the form takes it, so that nothing in it gets lost.
 */
export function JsonSection({ specification, onApply }: JsonSectionProps) {
  const written = JSON.stringify(specification, null, 2);
  const [edited, setEdited] = useState<string | null>(null);
  const [copied, setCopied] = useState(false);
  const apply = useMutation({
    mutationFn: async (text: string) => {
      const request = readJson(text);
      await post('/count', request);
      return request as AcceptedSpecification;
    },
    onSuccess: (accepted) => {
      onApply(draftOf(accepted));
      setEdited(null);
    },
  });
  const copy = async () => {
    await navigator.clipboard.writeText(edited ?? written);
    setCopied(true);
  };
  const download = () => {
    const address = URL.createObjectURL(new Blob([`${edited ?? written}\n`], { type: 'application/json' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = 'search.spec.json';
    link.click();
    URL.revokeObjectURL(address);
  };

  return (
    <section className="ask-section">
      <details>
        <summary>The specification as JSON</summary>
        <label htmlFor="specification-text" className="quiet">
          The terminal (tiegel search) and POST /api/v1/searches take the same text. Change it here, or paste
          another.
        </label>
        <textarea
          id="specification-text"
          className="mono specification-text"
          rows={Math.min(24, written.split('\n').length + 1)}
          spellCheck={false}
          value={edited ?? written}
          onChange={(event) => {
            setEdited(event.target.value);
            setCopied(false);
            apply.reset();
          }}
        />
        <p className="row">
          <button
            type="button"
            disabled={edited === null}
            onClick={() => edited !== null && apply.mutate(edited)}
          >
            Apply to the form
          </button>
          <button type="button" disabled={edited === null} onClick={() => setEdited(null)}>
            Drop the changes
          </button>
          <button type="button" onClick={copy}>
            Copy
          </button>
          <button type="button" onClick={download}>
            Download
          </button>
          <span role="status">{copied ? 'Copied.' : ''}</span>
        </p>
        <FaultList error={apply.error} what="The form was left as it is." />
      </details>
    </section>
  );
}

/** Throws with the parser's own words, which name the place. */
function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Error(`The text is not JSON: ${(error as SyntaxError).message}.`);
  }
}
