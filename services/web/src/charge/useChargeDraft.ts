import { useCallback, useEffect, useState } from 'react';
import {
  type ChargeDraft,
  type ElementRow,
  emptyElement,
  emptyMaster,
  keepDraft,
  keptDraft,
  type MasterRow,
} from './chargeDraft.ts';

/** The form of a charge, kept in this browser, with what can be done to it. */
export function useChargeDraft() {
  const [draft, setDraft] = useState(keptDraft);
  useEffect(() => keepDraft(draft), [draft]);

  const change = useCallback(
    (part: Partial<ChargeDraft>) => setDraft((before) => ({ ...before, ...part })),
    [],
  );
  const changeElement = useCallback(
    (symbol: string, part: Partial<ElementRow>) =>
      setDraft((before) => ({
        ...before,
        elements: { ...before.elements, [symbol]: { ...emptyElement, ...before.elements[symbol], ...part } },
      })),
    [],
  );
  const changeMaster = useCallback(
    (at: number, part: Partial<MasterRow>) =>
      setDraft((before) => ({
        ...before,
        masters: before.masters.map((row, place) => (place === at ? { ...row, ...part } : row)),
      })),
    [],
  );
  const addMaster = useCallback(
    () => setDraft((before) => ({ ...before, masters: [...before.masters, emptyMaster] })),
    [],
  );
  const removeMaster = useCallback(
    (at: number) =>
      setDraft((before) => ({ ...before, masters: before.masters.filter((_, place) => place !== at) })),
    [],
  );
  return { draft, change, changeElement, changeMaster, addMaster, removeMaster };
}

export type ChargeForm = ReturnType<typeof useChargeDraft>;
