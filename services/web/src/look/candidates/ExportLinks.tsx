import type { SearchView } from '@tiegel/contract';
import { formatCount } from '../../numbers/formatNumber.ts';
import { apiRoot } from '../../server/request.ts';
import { isFiltered } from '../filters/filters.ts';
import { selectionOf, type ViewState } from '../viewState.ts';

const formats = [
  { format: 'csv', name: 'CSV' },
  { format: 'ndjson', name: 'NDJSON' },
  { format: 'parquet', name: 'Parquet' },
  { format: 'xlsx', name: 'spreadsheet' },
];

/** The candidates as a file, with the filters and the order of the view; every file names what its rows depend on. */
export function ExportLinks({ search, view }: { search: SearchView; view: ViewState }) {
  const what = isFiltered(view.filters) ? 'what meets the filters' : `all ${formatCount(search.kept)}`;
  return (
    <p className="row">
      Export {what} as{' '}
      {formats.map(({ format, name }) => {
        const selection = selectionOf(view);
        selection.set('format', format);
        return (
          <a
            key={format}
            href={`${apiRoot}/searches/${encodeURIComponent(search.id)}/export?${selection}`}
            download
          >
            {name}
          </a>
        );
      })}
    </p>
  );
}
