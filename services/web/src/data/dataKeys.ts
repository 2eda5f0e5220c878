import type { Key } from '../frame/KeysDialog.tsx';

export const dataKeys: readonly Key[] = [
  { keys: '↑, ↓, Page Up, Page Down, Home, End', does: 'walk the rows of a table' },
  { keys: 'Shift+↑, Shift+↓', does: 'selects rows; Ctrl+C copies them as CSV' },
  { keys: '←, ↑, →, ↓', does: 'walk the cells of the matrix of pairs' },
  { keys: 'Enter', does: 'opens the row, or the equimolar alloy of the pair' },
];
