import { conditionNames, conditions } from '@tiegel/screening';
import { entryText } from '../../numbers/parseNumber.ts';

/** What the quantities assume beside the composition: 'anneal temperature 1273.15 K, ..., no grain size'. */
export function conditionsInWords(
  given: Readonly<Record<string, number>> = {},
  names: readonly string[] = conditionNames,
): string {
  return conditionNames
    .filter((name) => names.includes(name))
    .map((name) => {
      const { label, unit, default: usual } = conditions[name];
      const value = given[name] ?? usual;
      const words = label.toLowerCase();
      return value === null ? `no ${words}` : `${words} ${entryText(value)} ${unit}`;
    })
    .join(', ');
}
