import { apiRoot } from '../server/request.ts';
import { selectionOf, type ViewState } from './viewState.ts';

const formats = [
  { format: 'csv', name: 'CSV' },
  { format: 'ndjson', name: 'NDJSON' },
  { format: 'parquet', name: 'Parquet' },
];

/** The candidates as a file, with the filters and the order of the view; every file names what its rows depend on. */
export function ExportLinks({ searchId, view }: { searchId: string; view: ViewState }) {
  return (
    <p className="row">
      Export{' '}
      {formats.map(({ format, name }) => {
        const selection = selectionOf(view);
        selection.set('format', format);
        return (
          <a
            key={format}
            href={`${apiRoot}/searches/${encodeURIComponent(searchId)}/export?${selection}`}
            download
          >
            {name}
          </a>
        );
      })}
    </p>
  );
}
