import { useCallback, useState, useSyncExternalStore } from 'react';
import { onSharedText } from '../../frame/sharedText.ts';
import { keepMarks, marksOf, mostMarked } from './marks.ts';

/** The candidates of a search that somebody marked, whatever part of it is in sight. */
export interface Marks {
  /** canonical texts, in the order of marking */
  marked: readonly string[];
  /** how many there would have been, where the last were too many to be marked; null: they were marked */
  refused: number | null;
  /** what was cleared and can be brought back */
  cleared: readonly string[];
  /** marks all of them, or takes the marks away where all are marked already */
  turn: (texts: readonly string[]) => void;
  clear: () => void;
  bringBack: () => void;
}

export function useMarks(searchId: string): Marks {
  const marked = useSyncExternalStore(onSharedText, () => marksOf(searchId));
  const [latest, setLatest] = useState<Pick<Marks, 'refused' | 'cleared'> & { searchId: string }>();
  const { refused = null, cleared = [] } = latest?.searchId === searchId ? latest : {};
  const turn = useCallback(
    (texts: readonly string[]) => {
      const before = marksOf(searchId);
      const fresh = texts.filter((text) => !before.includes(text));
      const after = fresh.length > 0 ? [...before, ...fresh] : before.filter((text) => !texts.includes(text));
      const tooMany = after.length > mostMarked && fresh.length > 0;
      setLatest({ searchId, refused: tooMany ? after.length : null, cleared: [] });
      if (!tooMany) keepMarks(searchId, after);
    },
    [searchId],
  );
  const clear = useCallback(() => {
    setLatest({ searchId, refused: null, cleared: marksOf(searchId) });
    keepMarks(searchId, []);
  }, [searchId]);
  const bringBack = useCallback(() => {
    keepMarks(searchId, cleared);
    setLatest({ searchId, refused: null, cleared: [] });
  }, [searchId, cleared]);
  return { marked, refused, cleared, turn, clear, bringBack };
}
