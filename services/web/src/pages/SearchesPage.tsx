import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';
import { searchesQuery } from '../server/queries.ts';
import { SearchLine } from '../watch/SearchLine.tsx';
import '../watch/watch.css';

/** Every search of this server, the newest first. */
export function SearchesPage() {
  useTitle('Searches');
  const { data, error, refetch, dataUpdatedAt } = useQuery(searchesQuery);
  return (
    <div className="column">
      <div className="row">
        <h1>Searches</h1>
        <Link href="/ask" className="button">
          Ask a new one
        </Link>
      </div>
      {error && !data ? (
        <Failed error={error} what="The list of searches" onRetry={() => void refetch()} />
      ) : null}
      {error && data ? (
        <p className="note" role="status">
          This is how the searches stood at {formatInstant(new Date(dataUpdatedAt))}; nothing newer is known.
        </p>
      ) : null}
      {!data && !error ? <Waiting what="Fetching the searches" /> : null}
      {data?.length === 0 ? (
        <p className="read">
          No search has been asked here yet. <Link href="/ask">Describe one</Link>: the demonstration runs in
          a few seconds and shows what a result looks like.
        </p>
      ) : null}
      {data && data.length > 0 ? (
        <ul className="searches">
          {data.map((search) => (
            <SearchLine key={search.id} search={search} />
          ))}
        </ul>
      ) : null}
    </div>
  );
}
