import type { Mark } from '../ask/draft/draft.ts';

/** How a mark shows on a card, and what it means in words. */
export const markSigns: Record<Mark, { sign: string; word: string; meaning: string }> = {
  pool: { sign: '✓', word: 'in', meaning: 'may be in the alloy' },
  require: { sign: '+', word: 'must', meaning: 'must be in every alloy' },
  forbid: { sign: '−', word: 'not', meaning: 'must not be in any alloy' },
};
