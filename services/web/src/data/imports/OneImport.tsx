import { useQuery } from '@tanstack/react-query';
import type { ImportVersion } from '@tiegel/contract';
import { Link, useLocation } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useKeptText } from '../../frame/useKeptText.ts';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatInstant } from '../../numbers/formatInstant.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { apiRoot } from '../../server/request.ts';
import { importQuery } from '../dataQueries.ts';
import { countsInWords } from './fateWords.ts';
import { ForceButton, importName, searchesInWords } from './ImportLine.tsx';
import { kindOf } from './importKinds.ts';

/** Lines of an import that are shown; all of them are in its file. */
const shownLines = 200;

/** One import as it was stored: whether it holds, its rows, its file, and another one begun from it. */
export function OneImport({ number }: { number: string }) {
  useTitle(`Import ${number}`);
  const { data, error, refetch } = useQuery(importQuery(number));
  if (error && !data)
    return <Failed error={error} what={`Import ${number}`} onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Fetching the import" />;
  return <WholeImport version={data} />;
}

function WholeImport({ version }: { version: ImportVersion & { csv: string } }) {
  const { number, kind, at, rows, counts, searches, csv } = version;
  const [, navigate] = useLocation();
  const [typed, setTyped] = useKeptText(`import.${kind}`);
  const lines = csv.trimEnd().split(/\r\n|\n|\r/);
  const another = () => {
    setTyped(csv);
    navigate(`/data/imports/new?kind=${kind}`);
  };
  return (
    <article className="column" aria-labelledby="one-import-head">
      <div className="row">
        <h2 id="one-import-head">{importName(version)}</h2>
        <Link href="/data/imports">All imports</Link>
      </div>
      <p className="read">
        {kindOf(kind).name}, stored {formatInstant(at)}: {formatCount(rows)} {rows === 1 ? 'row' : 'rows'},{' '}
        {countsInWords(counts)} at that time.{' '}
        {searches === 0 ? (
          searchesInWords(searches)
        ) : (
          <Link href="/data/versions">{searchesInWords(searches)}</Link>
        )}
      </p>
      <ForceButton version={version} />
      <p className="row">
        <a
          className="button"
          href={`${apiRoot}/imports/${number}?format=csv`}
          download={`import-${number}.csv`}
        >
          Download as CSV
        </a>
        {typed.trim() === '' || typed === csv ? (
          <button type="button" onClick={another}>
            Begin another from these rows
          </button>
        ) : (
          <span className="quiet">
            The form of this kind holds rows that are not stored:{' '}
            <Link href={`/data/imports/new?kind=${kind}`}>go on with them</Link>
          </span>
        )}
      </p>
      <h3 id="rows-head">Its rows</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className="import-rows" aria-labelledby="rows-head" tabIndex={0}>
        <pre>{lines.slice(0, shownLines + 1).join('\n')}</pre>
      </section>
      {lines.length > shownLines + 1 ? (
        <p className="quiet">
          The first {formatCount(shownLines)} of {formatCount(lines.length - 1)} rows; the file has them all.
        </p>
      ) : null}
    </article>
  );
}
