import { useState } from 'react';
import {
  type ChargeDraft,
  type ElementRow,
  emptyElement,
  emptyMaster,
  keepDraft,
  keptDraft,
  type MasterRow,
} from './chargeDraft.ts';

/**
 * The form of a charge, kept in this browser, with what can be done to it. Each change alone goes onto what is kept:
 * another tab may have written the price of another material meanwhile.
 */
export function useChargeDraft() {
  const [draft, setDraft] = useState(keptDraft);
  const apply = (next: (before: ChargeDraft) => ChargeDraft) => {
    setDraft(next);
    keepDraft(next(keptDraft()));
  };
  const change = (part: Partial<ChargeDraft>) => apply((before) => ({ ...before, ...part }));
  // Rows of master alloys have no names of their own to be told apart by: they are kept together, as this tab has them.
  const changeMasters = (masters: MasterRow[]) => change({ masters });
  return {
    draft,
    change,
    changeElement: (symbol: string, part: Partial<ElementRow>) =>
      apply((before) => ({
        ...before,
        elements: { ...before.elements, [symbol]: { ...emptyElement, ...before.elements[symbol], ...part } },
      })),
    changeMaster: (at: number, part: Partial<MasterRow>) =>
      changeMasters(draft.masters.map((row, place) => (place === at ? { ...row, ...part } : row))),
    addMaster: () => changeMasters([...draft.masters, emptyMaster]),
    removeMaster: (at: number) => changeMasters(draft.masters.filter((_, place) => place !== at)),
  };
}

export type ChargeForm = ReturnType<typeof useChargeDraft>;
