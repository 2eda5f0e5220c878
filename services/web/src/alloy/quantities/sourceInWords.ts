import type { QuantityView } from '@tiegel/contract';

/** Where a formula comes from, and how far anybody compared it with that place. */
export function sourceInWords({ authors, year, where, checked }: QuantityView['source']): string {
  const published =
    [authors, where].filter((part) => part !== '').join(', ') + (year === null ? '' : ` (${year})`);
  const checking = {
    'against the paper': 'checked against the paper',
    'from memory': 'written from memory, not checked against the paper',
    definition: 'a definition',
    'common practice, no source': 'common practice, no source',
    'ours, no source': 'our own, no source',
  }[checked];
  return published === '' ? checking : `${published}; ${checking}.`;
}
