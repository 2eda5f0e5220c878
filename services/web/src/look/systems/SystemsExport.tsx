import { systemsFormats } from '@tiegel/contract/terms';
import { apiRoot } from '../../server/request.ts';
import { writeFilters } from '../filters/filters.ts';
import type { LookProps } from '../lookView.ts';

const names = { csv: 'CSV', ndjson: 'NDJSON' };

/** The systems that are shown, and those that would follow, as a file; each names what its rows depend on. */
export function SystemsExport({
  search,
  view,
  count,
}: Pick<LookProps, 'search' | 'view'> & { count: number }) {
  const path = `${apiRoot}/searches/${encodeURIComponent(search.id)}/systems/export`;
  return (
    <p className="row">
      Export {count === 1 ? 'the system' : 'these systems'} as{' '}
      {systemsFormats.map((format) => {
        const selection = writeFilters(new URLSearchParams(), view.filters);
        if (view.show === 'unexplored') selection.set('explored', 'no');
        selection.set('format', format);
        return (
          <a key={format} href={`${path}?${selection}`} download>
            {names[format]}
          </a>
        );
      })}
    </p>
  );
}
