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
  /** canonical compositions */
  entries: readonly string[];
  search: string | null;
}

/** Puts an alloy, or several, on one of the shortlists. */
export function AddToShortlist(props: AddToShortlistProps) {
  return (
    <details className="short-add">
      <summary>Add to a shortlist</summary>
      <Choice {...props} />
    </details>
  );
}

function Choice({ entries, search }: AddToShortlistProps) {
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
        <AddButton list={list} entries={entries} search={search} disabled={person.trim() === ''} />
      </p>
    </div>
  );
}

function AddButton({
  list,
  entries,
  search,
  disabled,
}: AddToShortlistProps & { list: string; disabled: boolean }) {
  const { list: state, act, unsent, refused } = useShortlist(list);
  const standing = new Set(state?.entries.flatMap((one) => (one.removed.value ? [] : one.entry)));
  const missing = entries.filter((entry) => !standing.has(entry));
  if (missing.length === 0) {
    return (
      <span role="status">
        {entries.length === 1 ? 'On the list' : 'All on the list'}
        {unsent > 0 ? ', not sent yet. ' : '. '}
        <Link href={`/shortlists/${list}`}>See the shortlist</Link>
      </span>
    );
  }
  const add = missing.map(
    (entry) => ({ kind: 'add', entry, ...(search === null ? {} : { search }) }) as const,
  );
  return (
    <>
      <button type="button" disabled={disabled || !state} onClick={() => act(...add)}>
        {addInWords(entries.length, missing.length)}
      </button>
      {refused ? <span role="alert">{refused.message}</span> : null}
    </>
  );
}

function addInWords(all: number, missing: number): string {
  if (all === 1) return 'Add it';
  if (missing === all) return `Add the ${all}`;
  return `Add the ${missing === 1 ? 'one' : missing} that ${missing === 1 ? 'is' : 'are'} not there yet`;
}
