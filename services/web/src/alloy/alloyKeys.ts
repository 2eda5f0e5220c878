import type { Key } from '../frame/KeysDialog.tsx';

/** The keys of the page of an alloy. */
export const alloyKeys: readonly Key[] = [
  { keys: '↑, ↓', does: 'in an amount: one step of the grid more or less' },
  { keys: 'Page up, Page down', does: 'in an amount: ten steps at once' },
  { keys: '←, →', does: 'on a curve: read it out from point to point' },
  { keys: 'Enter, Space', does: 'on a quantity: opens its formula, inputs and source' },
];
