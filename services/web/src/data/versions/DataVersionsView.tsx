import { useQuery } from '@tanstack/react-query';
import type { DataVersions } from '@tiegel/contract';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatInstant } from '../../numbers/formatInstant.ts';
import { dataVersionsQuery } from '../dataQueries.ts';
import { importName } from '../imports/ImportLine.tsx';
import { kindOf } from '../imports/importKinds.ts';

/** Which searches used which version of the data. */
export function DataVersionsView() {
  useTitle('Versions of the data');
  const { data, error, refetch } = useQuery(dataVersionsQuery);
  return (
    <section className="column" aria-labelledby="versions-head">
      <h2 id="versions-head">Versions of the data</h2>
      <p className="read">
        Every value that a result can depend on makes the version: elements, pairs, the price list in force,
        columns of your own. A search keeps the version that it was planned with; another value gives another
        version.
      </p>
      {error && !data ? <Failed error={error} what="The versions" onRetry={() => void refetch()} /> : null}
      {!data && !error ? <Waiting what="Fetching the versions" /> : null}
      {data?.items.map((item) => (
        <OneVersion key={item.dataVersion} item={item} />
      ))}
    </section>
  );
}

function OneVersion({ item }: { item: DataVersions['items'][number] }) {
  const { dataVersion, current, firstUsed, searches, with: own } = item;
  return (
    <article className="data-version" aria-labelledby={`version-${dataVersion}`}>
      <h3 id={`version-${dataVersion}`}>
        <code>{dataVersion}</code> {current ? <span className="data-current">● in force now</span> : null}
      </h3>
      <p>
        <OwnImports own={own} />
        {firstUsed ? <span className="quiet"> First used {formatInstant(firstUsed)}.</span> : null}
      </p>
      {searches.length === 0 ? (
        <p className="quiet">No search has used it.</p>
      ) : (
        <ul className="data-version-searches">
          {searches.map(({ id, name, createdAt }) => (
            <li key={id}>
              <Link href={`/searches/${id}`}>{name === '' ? 'Without a name' : name}</Link>{' '}
              <span className="quiet">{formatInstant(createdAt)}</span>
            </li>
          ))}
        </ul>
      )}
    </article>
  );
}

function OwnImports({ own }: { own: DataVersions['items'][number]['with'] }) {
  if (own.length === 0) return 'With nothing of your own.';
  return (
    <>
      With your{' '}
      {own.map((one, at) => (
        <span key={one.number}>
          {at > 0 ? ', ' : ''}
          {kindOf(one.kind).one} <Link href={`/data/imports/${one.number}`}>{importName(one)}</Link>
        </span>
      ))}
      .
    </>
  );
}
