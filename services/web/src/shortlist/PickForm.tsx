import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Shortlist } from '@tiegel/contract';
import { useId } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { useKept } from '../frame/useKept.ts';
import { formatInstant } from '../numbers/formatInstant.ts';
import { searchesQuery } from '../server/queries.ts';
import { post } from '../server/request.ts';

/** Adds a spread of the candidates of a search. */
export function PickForm({ id, person }: { id: string; person: string }) {
  const { data: searches } = useQuery(searchesQuery);
  const client = useQueryClient();
  const [asked, setAsked] = useKept(`pick.${id}`, { search: '', count: '5', onePerSystem: true });
  const { search, count, onePerSystem } = asked;
  const field = useId();
  const pick = useMutation({
    mutationFn: (body: object) => post<Shortlist>(`/shortlists/${id}/pick`, body),
    onSuccess: () => client.invalidateQueries({ queryKey: ['shortlists', id] }),
  });
  const done = (searches ?? []).filter(({ state, kept }) => state === 'done' && kept > 0);
  const chosen = search || done[0]?.id;
  if (searches === undefined) return null;
  if (chosen === undefined)
    return <p className="quiet">Once a search has ended, some of its candidates can be picked here.</p>;
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        pick.mutate({ search: chosen, count: Number(count), onePerSystem, by: person.trim() });
      }}
    >
      <label htmlFor={`${field}-count`}>Pick</label>
      <input
        id={`${field}-count`}
        type="number"
        required
        min={1}
        max={100}
        value={count}
        onChange={(event) => setAsked({ ...asked, count: event.target.value })}
      />
      <label htmlFor={`${field}-search`}>that lie far apart, of</label>
      <select
        id={`${field}-search`}
        value={chosen}
        onChange={(event) => setAsked({ ...asked, search: event.target.value })}
      >
        {done.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name === '' ? `without a name, ${formatInstant(one.createdAt)}` : one.name}
          </option>
        ))}
      </select>
      <label>
        <input
          type="checkbox"
          checked={onePerSystem}
          onChange={(event) => setAsked({ ...asked, onePerSystem: event.target.checked })}
        />{' '}
        at most one of each set of elements
      </label>
      <button type="submit" disabled={person.trim() === '' || pick.isPending}>
        Add them
      </button>
      {pick.error ? <FaultList error={pick.error} what="Nothing was added." /> : null}
    </form>
  );
}
