import { conditionNames, conditions } from '@tiegel/screening';
import { entryText } from '../numbers/parseNumber.ts';

/** What the quantities assume beside the composition: 'anneal temperature 1273.15 K, ..., no grain size'. */
export function conditionsInWords(): string {
  return conditionNames
    .map((name) => {
      const { label, unit, default: value } = conditions[name];
      const words = label.toLowerCase();
      return value === null ? `no ${words}` : `${words} ${entryText(value)} ${unit}`;
    })
    .join(', ');
}
