import { nameInSentence } from '@tiegel/contract/terms';
import { elementOf } from '@tiegel/elements';
import { type ConditionName, conditionNames, conditions } from '@tiegel/screening';
import type { Draft } from '../draft/draft.ts';

/** Which part of the form a field belongs to, in words: 'Chromium', 'Limit on density'; '' for the form as a whole. */
export function placeInWords(pointer: string, draft: Draft, nameOf: (quantity: string) => string): string {
  const [, section, key, symbol] = pointer.split('/');
  const called = ({ quantity }: { quantity: string } = { quantity: '' }) =>
    nameInSentence(quantity, nameOf(quantity));
  switch (section) {
    case 'elements':
      return 'Elements';
    case 'components':
      return 'Number of elements';
    case 'fractions':
      return key === 'each' ? (elementOf(symbol ?? '')?.name ?? 'Shares') : 'Shares';
    case 'limits':
      return key === undefined ? 'Limits' : `Limit on ${called(draft.limits[Number(key)])}`;
    case 'rank':
      return key === undefined ? 'Ranking' : `Ranking by ${called(draft.rank[Number(key)])}`;
    case 'lets':
      return key === undefined
        ? 'Own expressions'
        : `Expression ${draft.lets[Number(key)]?.name ?? ''}`.trim();
    case 'keptOnly':
      return key === undefined
        ? 'Applied to the kept ones only'
        : `Of the kept ones, ${called(draft.keptOnly[Number(key)])}`;
    case 'conditions':
      return conditionNames.includes(key as ConditionName)
        ? conditions[key as ConditionName].label
        : 'Conditions';
    case 'tally':
      return 'What is counted';
    case 'front':
      return 'Best compromises';
    case 'keep':
    case 'keepPerSystem':
      return 'What is kept';
    case 'name':
      return 'Name';
    default:
      return '';
  }
}
