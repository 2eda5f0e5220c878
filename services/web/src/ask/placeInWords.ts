import { elementOf } from '@tiegel/elements';
import type { Draft } from './draft.ts';

/** Which part of the form a field belongs to, in words: 'Chromium', 'Limit on density'; '' for the form as a whole. */
export function placeInWords(pointer: string, draft: Draft, nameOf: (quantity: string) => string): string {
  const [, section, key, symbol] = pointer.split('/');
  switch (section) {
    case 'elements':
      return 'Elements';
    case 'components':
      return 'Number of elements';
    case 'fractions':
      return key === 'each' ? (elementOf(symbol ?? '')?.name ?? 'Shares') : 'Shares';
    case 'limits':
      return key === undefined
        ? 'Limits'
        : `Limit on ${nameOf(draft.limits[Number(key)]?.quantity ?? '').toLowerCase()}`;
    case 'rank':
      return key === undefined
        ? 'Ranking'
        : `Ranking by ${nameOf(draft.rank[Number(key)]?.quantity ?? '').toLowerCase()}`;
    case 'keep':
    case 'keepPerSystem':
      return 'What is kept';
    case 'name':
      return 'Name';
    default:
      return '';
  }
}
