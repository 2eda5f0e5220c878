import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Shortlist } from '@tiegel/contract';
import { shortlistMost } from '@tiegel/contract/terms';
import { useId } from 'react';
import { Link, useLocation } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import { FaultList } from '../frame/FaultList.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';
import { post } from '../server/request.ts';
import { PersonField } from '../shortlist/PersonField.tsx';
import { usePerson } from '../shortlist/person.ts';
import '../shortlist/shortlist.css';
import { useKeptText } from '../frame/useKeptText.ts';
import { shortlistsQuery } from '../shortlist/shortlistQueries.ts';

/** Every shortlist, and a form that begins one. */
export function ShortlistsPage() {
  useTitle('Shortlists');
  const { data, error, refetch } = useQuery(shortlistsQuery);
  return (
    <div className="short-page">
      <h1>Shortlists</h1>
      <p className="read">
        A shortlist is what a laboratory agrees on: alloys with notes and how far they are. Send its address
        to others; several people may write at once, and nothing is lost.
      </p>
      {error && !data ? (
        <Failed error={error} what="The list of shortlists" onRetry={() => void refetch()} />
      ) : null}
      {!data && !error ? <Waiting what="Fetching the shortlists" /> : null}
      {data?.length === 0 ? <p>There is none yet.</p> : null}
      <ul className="short-lists">
        {data?.map(({ id, name, entries, createdAt }) => {
          const count = entries.filter(({ removed }) => !removed.value).length;
          return (
            <li key={id}>
              <Link href={`/shortlists/${id}`}>{name.value}</Link>
              <span className="quiet">
                {count} {count === 1 ? 'alloy' : 'alloys'}, begun by {name.by}, {formatInstant(createdAt)}
              </span>
            </li>
          );
        })}
      </ul>
      <Begin />
    </div>
  );
}

function Begin() {
  const [person] = usePerson();
  const [name, setName] = useKeptText('shortlist');
  const [, go] = useLocation();
  const client = useQueryClient();
  const id = useId();
  const begin = useMutation({
    mutationFn: () => post<Shortlist>('/shortlists', { name: name.trim(), by: person.trim() }),
    onSuccess: async (list) => {
      setName('');
      await client.invalidateQueries({ queryKey: ['shortlists'] });
      go(`/shortlists/${list.id}`);
    },
  });
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Begin a shortlist</h2>
      <PersonField />
      <form
        className="row"
        onSubmit={(event) => {
          event.preventDefault();
          begin.mutate();
        }}
      >
        <label htmlFor={id}>What for</label>
        <input
          id={id}
          value={name}
          maxLength={shortlistMost.name}
          onChange={(event) => setName(event.target.value)}
        />
        <button type="submit" disabled={name.trim() === '' || person.trim() === '' || begin.isPending}>
          Begin the shortlist
        </button>
      </form>
      {begin.error ? <FaultList error={begin.error} what="The shortlist was not begun." /> : null}
    </section>
  );
}
