import { useCallback, useEffect, useState } from 'react';
import { type Draft, emptyDraft } from './draft.ts';

const place = 'tiegel.ask.1';

function stored(): Draft | null {
  try {
    const text = sessionStorage.getItem(place);
    // A draft of an earlier release may lack keys that were added since.
    return text === null ? null : { ...emptyDraft, ...(JSON.parse(text) as Draft) };
  } catch {
    return null;
  }
}

/** The form's draft, kept in this browser tab across reloads; what a replacement threw away can be brought back. `fillings` counts replacements. */
export function useDraft() {
  const [draft, setDraft] = useState<Draft>(() => stored() ?? emptyDraft);
  const [replaced, setReplaced] = useState<Draft | null>(null);
  const [fillings, setFillings] = useState(0);

  useEffect(() => {
    try {
      sessionStorage.setItem(place, JSON.stringify(draft));
    } catch {
      // A browser that refuses storage only loses the draft on a reload.
    }
  }, [draft]);

  const change = useCallback((part: Partial<Draft> | ((draft: Draft) => Partial<Draft>)) => {
    setDraft((before) => ({ ...before, ...(typeof part === 'function' ? part(before) : part) }));
  }, []);
  const replace = useCallback(
    (next: Draft) => {
      setReplaced(Object.keys(draft.marks).length > 0 ? draft : null);
      setDraft(next);
      setFillings((before) => before + 1);
    },
    [draft],
  );
  const bringBack = useCallback(() => {
    if (replaced) setDraft(replaced);
    setReplaced(null);
  }, [replaced]);

  return { draft, change, replace, fillings, replaced, bringBack };
}

export type ChangeDraft = ReturnType<typeof useDraft>['change'];
