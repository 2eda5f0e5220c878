import { useMutation } from '@tanstack/react-query';
import { parseSpecification } from '@tiegel/contract/terms';
import { useEffect, useRef } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { post } from '../../server/request.ts';
import type { Draft } from '../draft/draft.ts';
import { type AcceptedSpecification, draftOf } from '../draft/draftOf.ts';
import { type RequestedSpecification, specificationOf } from '../draft/specificationOf.ts';
import { writeJson } from './writeJson.ts';

/** A pause in typing after which a text is tried (ms). */
const pause = 500;

/**
 * - same: the text is what the form says
 * - checking: the text was changed and is being tried
 * - taken: the form has taken the text, which may be written otherwise than the form would
 * - refused: the text is not right; the form is as it was
 * - behind: it was refused, and the form has changed since
 */
type JsonState = 'same' | 'checking' | 'taken' | 'refused' | 'behind';

/** A text of somebody's own; `form` is what the form said, as JSON, when it was last in step with it. */
interface Edited {
  text: string;
  form: string;
  /** from a file: the form is filled anew, which can be taken back */
  opened: boolean;
}

/** The specification as a text that can be changed: the form follows once the server accepts it. A reload keeps it. */
export function useJsonText(
  specification: RequestedSpecification,
  onApply: (draft: Draft, opened: boolean) => void,
) {
  const written = writeJson(specification);
  const [edited, setEdited] = useKept<Edited | null>('ask.json', null);
  const attempt = useMutation({
    mutationFn: async ({ text }: Edited) => {
      const request = readJson(text);
      await post('/count', request);
      return request as AcceptedSpecification;
    },
    onSuccess: (accepted, { text, opened }) => {
      const draft = draftOf(accepted);
      setEdited({ text, opened, form: writeJson(specificationOf(draft).specification) });
      onApply(draft, opened);
    },
  });

  const tried = useRef<string | null>(null);
  const { mutate } = attempt;
  useEffect(() => {
    if (edited === null || tried.current === edited.text) return;
    const timer = setTimeout(() => {
      tried.current = edited.text;
      mutate(edited);
    }, pause);
    return () => clearTimeout(timer);
  }, [edited, mutate]);

  const answered = edited !== null && attempt.variables?.text === edited.text;
  const refused = answered && attempt.isError;
  const taken = answered && attempt.isSuccess;
  // A text that was taken steps aside as soon as the form says something else.
  useEffect(() => {
    if (taken && edited.form !== written) setEdited(null);
  }, [taken, edited, written, setEdited]);

  const state: JsonState =
    edited === null
      ? 'same'
      : taken
        ? 'taken'
        : refused
          ? edited.form === written
            ? 'refused'
            : 'behind'
          : 'checking';
  return {
    text: edited?.text ?? written,
    state,
    error: refused ? attempt.error : null,
    edit: (text: string, opened = false) =>
      setEdited(text === written ? null : { text, form: written, opened }),
    drop: () => {
      tried.current = null;
      setEdited(null);
    },
  };
}

/** Throws with the parser's own words, which name the place. */
function readJson(text: string): unknown {
  try {
    return parseSpecification(text);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new Error(`The text is not JSON: ${error.message}.`);
  }
}
