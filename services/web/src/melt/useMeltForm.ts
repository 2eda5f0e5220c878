import { useQuery } from '@tanstack/react-query';
import { useCallback, useEffect, useMemo, useState } from 'react';
import { sheetQuery } from '../charge/savedSheet.ts';
import { entryOf } from './entryOf.ts';
import {
  emptyRow,
  keepMeltDraft,
  keptMeltDraft,
  type MeltDraft,
  rowsOfSheet,
  type WeighedRow,
} from './meltDraft.ts';

/**
 * The form of a melt, kept in this browser until it is sent.
 * @param place where it is kept
 * @param start what it begins with where nothing is kept
 */
export function useMeltForm(place: string, start: () => MeltDraft) {
  const [draft, setDraft] = useState(() => keptMeltDraft(place) ?? start());
  const number = draft.charge.trim();
  const sheet = useQuery({ ...sheetQuery(number), enabled: number !== '' });
  const known = number === '' ? null : (sheet.data ?? null);
  const written = useMemo(() => entryOf(draft, known), [draft, known]);

  useEffect(() => keepMeltDraft(place, draft), [place, draft]);
  useEffect(() => {
    if (known !== null) setDraft((before) => ({ ...before, weighed: rowsOfSheet(known, before.weighed) }));
  }, [known]);

  const change = useCallback(
    (part: Partial<MeltDraft>) => setDraft((before) => ({ ...before, ...part })),
    [],
  );
  const changeRow = useCallback(
    (at: number, part: Partial<WeighedRow>) =>
      setDraft((before) => ({
        ...before,
        weighed: before.weighed.map((row, index) => (index === at ? { ...row, ...part } : row)),
      })),
    [],
  );
  const addRow = useCallback(
    () => setDraft((before) => ({ ...before, weighed: [...before.weighed, emptyRow] })),
    [],
  );
  const removeRow = useCallback(
    (at: number) =>
      setDraft((before) => ({ ...before, weighed: before.weighed.filter((_, index) => index !== at) })),
    [],
  );
  return { draft, change, changeRow, addRow, removeRow, sheet: known, sheetError: sheet.error, written };
}

export type MeltForm = ReturnType<typeof useMeltForm>;
