import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { FaultList } from '../../frame/FaultList.tsx';
import { searchesQuery } from '../../server/queries.ts';
import { asSentence } from '../../words/asSentence.ts';
import type { Draft } from '../draft/draft.ts';
import { draftOf } from '../draft/draftOf.ts';

/** An earlier search fills the form, to be asked again with a change. */
export function EarlierSearch({ onFill }: { onFill: (draft: Draft) => void }) {
  const { data: searches, error } = useQuery(searchesQuery);
  const [chosen, setChosen] = useState('');
  const search = searches?.find(({ id }) => id === chosen) ?? searches?.[0];
  return (
    <div className="begin-way">
      <h3>From an earlier search</h3>
      {search ? (
        <>
          <p className="row">
            <select
              aria-label="Earlier search"
              value={search.id}
              onChange={(event) => setChosen(event.target.value)}
            >
              {searches!.map(({ id, name, createdAt }) => (
                <option key={id} value={id}>
                  {name}, {createdAt.slice(0, 10)}
                </option>
              ))}
            </select>
            <button type="button" onClick={() => onFill(draftOf(search.specification))}>
              Fill the form
            </button>
          </p>
          <p className="small quiet">{asSentence(search.question)}</p>
        </>
      ) : (
        <p className="small quiet">
          {error ? 'The list of searches is not here yet.' : 'None has been asked here yet.'}
        </p>
      )}
      <FaultList inBackground error={error} what="The form is as it was." />
    </div>
  );
}
