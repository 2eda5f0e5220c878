import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { useRef } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { formatPercent } from '../numbers/formatNumber.ts';
import { searchKey } from '../server/queries.ts';
import { request } from '../server/request.ts';

type Verb = 'pause' | 'resume' | 'cancel';

/** Pause, resume, cancel. Cancelling asks once, for it cannot be undone. */
export function SearchControls({ search }: { search: SearchView }) {
  const client = useQueryClient();
  const asking = useRef<HTMLDialogElement>(null);
  const { mutate, error, isPending } = useMutation({
    mutationFn: (verb: Verb) => request<SearchView>(`/searches/${search.id}/${verb}`, { method: 'POST' }),
    onSuccess: (view) => client.setQueryData(searchKey(search.id), view),
  });
  const { progress, name } = search;

  return (
    <>
      <p className="row">
        {search.state === 'paused' ? (
          <button type="button" disabled={isPending} onClick={() => mutate('resume')}>
            Resume
          </button>
        ) : (
          <button type="button" disabled={isPending} onClick={() => mutate('pause')}>
            Pause
          </button>
        )}
        <button type="button" disabled={isPending} onClick={() => asking.current?.showModal()}>
          Cancel search …
        </button>
      </p>
      <FaultList error={error} what="The search goes on as before." />
      <dialog ref={asking} className="keys" aria-labelledby="cancel-head">
        <h2 id="cancel-head">Cancel this search?</h2>
        <p className="read">
          {name === '' ? 'The search' : `“${name}”`} has tested{' '}
          {formatPercent(progress.points, progress.total)} of its compositions. A cancelled search cannot be
          resumed and shows no candidates; its specification is kept, so that it can be asked again. To go on
          later, pause it instead.
        </p>
        <form method="dialog" className="row">
          <button type="submit">Let it go on</button>
          <button type="submit" onClick={() => mutate('cancel')}>
            Cancel the search
          </button>
        </form>
      </dialog>
    </>
  );
}
