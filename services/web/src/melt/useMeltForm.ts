import { useQuery } from '@tanstack/react-query';
import { useCallback, useEffect, useMemo, useState } from 'react';
import { fieldId } from '../ask/faults/faultsContext.ts';
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
  const [left, setLeft] = useState<readonly string[]>([]);
  const [tried, setTried] = useState(false);

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
  // Nobody is blamed for a field that they have not come to, until they try to send the form without it.
  const isDue = (pointer: string) =>
    tried ||
    !written.lacking.has(pointer) ||
    left.some((id) => id === fieldId(pointer) || id.startsWith(`${fieldId(pointer)}-`));
  return {
    ...{ draft, change, changeRow, addRow, removeRow, sheet: known, sheetError: sheet.error, written },
    /** what is wrong, as far as it is to be said by now */
    faults: new Map([...written.faults].filter(([pointer]) => isDue(pointer))),
    isSendable: written.faults.size === 0 && sheet.error === null,
    /** somebody left the field with this id */
    leave: (id: string) => id !== '' && !left.includes(id) && setLeft([...left, id]),
    /** somebody tried to send the form while something was wrong: from now on all of it is said */
    tell: () => setTried(true),
  };
}

export type MeltForm = ReturnType<typeof useMeltForm>;
