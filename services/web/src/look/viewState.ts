import { type Filters, readFilters, writeFilters } from './filters/filters.ts';
import { type PlotState, type ResultView, readPlot, resultViews, writePlot } from './scatter/plotState.ts';

/** Everything that tells one view of a result from another; all of it stands in the address. */
export interface ViewState {
  /** table, scatter, ... */
  show: ResultView;
  filters: Filters;
  /** 'rank' or a quantity */
  order: string;
  direction: 'asc' | 'desc';
  /** quantities shown, in order; null for the usual ones */
  columns: string[] | null;
  /** number of the first row that is shown, from 0 */
  at: number;
  /** what the scatter shows */
  plot: PlotState;
  /** a quantity whose distribution is shown beside those asked for; null for none */
  beside: string | null;
}

/** Reads a view from the search part of an address. */
export function readView(text: string): ViewState {
  const address = new URLSearchParams(text);
  const at = Number(address.get('at') ?? 0);
  const show = resultViews.find(({ id }) => id === address.get('view'));
  return {
    show: show?.id ?? 'table',
    filters: readFilters(address),
    order: address.get('order') ?? 'rank',
    direction: address.get('direction') === 'desc' ? 'desc' : 'asc',
    columns: address.has('columns') ? address.get('columns')!.split(',').filter(Boolean) : null,
    at: Number.isInteger(at) && at > 0 ? at : 0,
    plot: readPlot(address),
    beside: address.get('beside') || null,
  };
}

/** The search part of an address for a view; what is usual is left out. */
export function writeView(view: ViewState): string {
  const { show, filters, order, direction, columns, at, plot, beside } = view;
  const address = writeFilters(new URLSearchParams(), filters);
  if (show !== 'table') address.set('view', show);
  if (order !== 'rank') address.set('order', order);
  if (direction === 'desc') address.set('direction', direction);
  if (columns !== null) address.set('columns', columns.join(','));
  if (at > 0) address.set('at', String(at));
  if (beside !== null) address.set('beside', beside);
  return writePlot(address, plot).toString().replaceAll('%2C', ',');
}

/** What the API is asked for one selection of candidates: filters and order, without the page. */
export function selectionOf({
  filters,
  order,
  direction,
}: Pick<ViewState, 'filters' | 'order' | 'direction'>): URLSearchParams {
  const selection = writeFilters(new URLSearchParams(), filters);
  selection.set('order', order);
  selection.set('direction', direction);
  return selection;
}
