import { formatCount } from '../../numbers/formatNumber.ts';
import { writeFilters } from '../filters/filters.ts';
import type { ViewState } from '../viewState.ts';

type Selection = Pick<ViewState, 'filters' | 'order' | 'direction' | 'at'>;

/**
 * What the server does for a view, in words: putting the kept rows into an order, finding those that meet
 * filters, or going to a row.
 * @param before the view whose rows are shown meanwhile, null for none
 * @param nameOf a quantity's name inside a sentence
 */
export function selectingInWords(
  asked: Selection,
  before: Selection | null,
  kept: number,
  nameOf: (id: string) => string,
): string {
  const { order, direction, at } = asked;
  if (before === null || order !== before.order || direction !== before.direction) {
    if (order === 'rank') return 'Fetching the candidates';
    const from = direction === 'asc' ? 'lowest' : 'highest';
    return `Putting ${formatCount(kept)} rows in order by ${nameOf(order)}, ${from} first`;
  }
  const filters = (view: Selection) => writeFilters(new URLSearchParams(), view.filters).toString();
  if (filters(asked) !== filters(before)) return 'Finding the rows that meet the filters';
  return at === before.at ? 'Fetching the candidates' : `Going to row ${formatCount(at + 1)}`;
}
