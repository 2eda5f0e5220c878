import type { LookProps } from '../lookView.ts';
import { isFiltered, noFilters } from './filters.ts';

/** What stands in place of a view that has no candidate to show. */
export function NothingMeets({ view, change }: Pick<LookProps, 'view' | 'change'>) {
  return (
    <p className="note">
      {isFiltered(view.filters)
        ? 'None of the kept candidates meets these filters. '
        : 'There is no row here. '}
      <button type="button" onClick={() => change({ filters: noFilters, at: 0 })}>
        Show all that were kept
      </button>
    </p>
  );
}
