import type { Filters } from '../../look/filters/filters.ts';
import { entryText } from '../../numbers/parseNumber.ts';
import { type Draft, limitRow, type Mark } from './draft.ts';

/** A draft with filters on candidates turned into limits, required and forbidden elements. */
export function withFilters(draft: Draft, { ranges, has, without }: Filters): Draft {
  const limits = [...draft.limits];
  for (const { quantity, min, max } of ranges) {
    const given = {
      ...(min === undefined ? {} : { min: entryText(min) }),
      ...(max === undefined ? {} : { max: entryText(max) }),
    };
    const index = limits.findIndex((row) => row.quantity === quantity);
    if (index < 0) limits.push(limitRow(quantity, given));
    else limits[index] = { ...limits[index]!, ...given };
  }
  const marks: Record<string, Mark> = { ...draft.marks };
  for (const symbol of has) marks[symbol] = 'require';
  for (const symbol of without) marks[symbol] = 'forbid';
  return { ...draft, limits, marks };
}
