import { useQuery } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import { PersonField } from './PersonField.tsx';
import { usePerson } from './person.ts';
import { shortlistsQuery } from './shortlistQueries.ts';
import './shortlist.css';
import { useShortlist } from './useShortlist.ts';

interface AddToShortlistProps {
  /** canonical composition */
  entry: string;
  search: string | null;
}

/** Puts an alloy on one of the shortlists. */
export function AddToShortlist(props: AddToShortlistProps) {
  return (
    <details className="short-add">
      <summary>Add to a shortlist</summary>
      <Choice {...props} />
    </details>
  );
}

function Choice({ entry, search }: AddToShortlistProps) {
  const { data, error, refetch } = useQuery(shortlistsQuery);
  const [chosen, setChosen] = useState<string | null>(null);
  const [person] = usePerson();
  const id = useId();
  const list = chosen ?? data?.[0]?.id ?? null;
  if (error && !data)
    return <Failed error={error} what="The list of shortlists" onRetry={() => void refetch()} />;
  if (!data) return <p role="status">Fetching the shortlists …</p>;
  if (list === null) {
    return (
      <p>
        There is no shortlist yet. <Link href="/shortlists">Begin one</Link>, then come back.
      </p>
    );
  }
  return (
    <div className="short-add-form">
      <PersonField />
      <p className="row">
        <label htmlFor={id}>Shortlist</label>
        <select id={id} value={list} onChange={(event) => setChosen(event.target.value)}>
          {data.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name.value}
            </option>
          ))}
        </select>
        <AddButton list={list} entry={entry} search={search} disabled={person.trim() === ''} />
      </p>
    </div>
  );
}

function AddButton({
  list,
  entry,
  search,
  disabled,
}: AddToShortlistProps & { list: string; disabled: boolean }) {
  const { list: state, act, unsent, refused } = useShortlist(list);
  const there = state?.entries.some((one) => one.entry === entry && !one.removed.value) ?? false;
  if (there) {
    return (
      <span role="status">
        {unsent > 0 ? 'On the list, not sent yet.' : 'On the list.'}{' '}
        <Link href={`/shortlists/${list}`}>See the shortlist</Link>
      </span>
    );
  }
  return (
    <>
      <button
        type="button"
        disabled={disabled || !state}
        onClick={() => act({ kind: 'add', entry, ...(search === null ? {} : { search }) })}
      >
        Add it
      </button>
      {refused ? <span role="alert">{refused.message}</span> : null}
    </>
  );
}
