import type { Amounts } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { useState } from 'react';
import { useKept } from '../../frame/useKept.ts';
import { entryText } from '../../numbers/parseNumber.ts';
import { type Editor, editorOf } from './editorState.ts';

interface Kept {
  /** the canonical text of the alloy that the page shows: of another alloy nothing is kept */
  of: string;
  /** the alloy that the page began with */
  start: Amounts;
  editor: Editor;
}

/**
 * The editor as it was typed, with amounts that nobody can read yet or that do not make 100; a reload keeps
 * it, for the address holds nothing but whole alloys. `write` takes the editor and the alloy that the page
 * shows for it.
 */
export function useKeptEditor(
  shown: Amounts,
): [{ start: Amounts; editor: Editor }, write: (editor: Editor, shown: Amounts) => void] {
  const fresh = { of: formatComposition(shown), start: shown, editor: editorOf(shown, entryText) };
  const [kept, setKept] = useKept<Kept>('editor', fresh);
  const [live, setLive] = useState(() => (kept.of === fresh.of ? kept : fresh));
  return [
    live,
    (editor, next) => {
      const written = { of: formatComposition(next), start: live.start, editor };
      setLive(written);
      setKept(written);
    },
  ];
}
