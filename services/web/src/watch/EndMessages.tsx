import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { Link, useRoute } from 'wouter';
import { interval, isUnfinished, searchQuery } from '../server/queries.ts';
import { ServerProblem } from '../server/request.ts';
import { endInWords } from './endInWords.ts';
import { notify } from './telling.ts';
import { unwatchSearch, useWatchedSearches } from './watchedSearches.ts';

/** On every page: the end of each search that this tab saw at work, until somebody closes it or goes there. */
export function EndMessages() {
  const ids = useWatchedSearches();
  return (
    <div className="banners" role="status">
      {ids.map((id) => (
        <EndMessage key={id} id={id} />
      ))}
    </div>
  );
}

function EndMessage({ id }: { id: string }) {
  const [here] = useRoute(`/searches/${id}`);
  const { data: search, error } = useQuery({
    ...searchQuery(id),
    // Its own page keeps it current.
    enabled: !here,
    refetchInterval: ({ state }) =>
      interval(state.data === undefined || isUnfinished(state.data) ? 5000 : false, state.error),
    // A tab out of sight is what a notification is for.
    refetchIntervalInBackground: true,
  });
  const ended = search !== undefined && !isUnfinished(search);
  const told = useRef(false);
  const name = search === undefined || search.name === '' ? 'The search without a name' : `“${search.name}”`;
  useEffect(() => {
    if (!ended || told.current) return;
    told.current = true;
    notify(name, endInWords(search), id);
  }, [ended, name, search, id]);
  useEffect(() => {
    if (error instanceof ServerProblem && error.status === 404) unwatchSearch(id);
  }, [error, id]);

  if (!ended) return null;
  return (
    <p className="note row">
      <span>
        <b>{name} has ended.</b> {endInWords(search)}
      </span>
      {here ? null : (
        <Link href={`/searches/${id}`} className="button" onClick={() => unwatchSearch(id)}>
          Look at it
        </Link>
      )}
      <button type="button" className="button-plain" onClick={() => unwatchSearch(id)}>
        Close
      </button>
    </p>
  );
}
