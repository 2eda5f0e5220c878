/** What is known of an element as it is bought, as it was typed. */
export interface ElementRow {
  purity: string;
  price: string;
  loss: string;
  /** not there as a metal of its own: it has to come from a master alloy */
  absent: boolean;
}

/** A master alloy, as it was typed. */
export interface MasterRow {
  name: string;
  contains: string;
  amounts: 'wt.%' | 'at.%';
  purity: string;
  price: string;
}

/** The form of a charge: texts, not numbers, so that '99,' stays what somebody is typing. */
export interface ChargeDraft {
  mass: string;
  resolution: string;
  /** what the charge is for */
  name: string;
  /** by symbol; kept for elements that the alloy of the moment has not, for a laboratory buys them once */
  elements: Record<string, ElementRow>;
  masters: MasterRow[];
  /** of the prices that were read from a list; '': that of the price list in force */
  currency: string;
}

export const emptyElement: ElementRow = { purity: '', price: '', loss: '', absent: false };
export const emptyMaster: MasterRow = { name: '', contains: '', amounts: 'wt.%', purity: '', price: '' };
const emptyDraft: ChargeDraft = {
  mass: '50',
  resolution: '0.001',
  name: '',
  elements: {},
  masters: [],
  currency: '',
};

const place = 'tiegel.charge.1';

/** The form as it was left in this browser, whatever the alloy: the materials on the shelf stay the same. */
export function keptDraft(): ChargeDraft {
  try {
    const text = localStorage.getItem(place);
    // A draft of an earlier release may lack keys that were added since.
    return text === null ? emptyDraft : { ...emptyDraft, ...(JSON.parse(text) as ChargeDraft) };
  } catch {
    return emptyDraft;
  }
}

export function keepDraft(draft: ChargeDraft): void {
  try {
    localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // A browser that refuses storage only loses the form on a reload.
  }
}
