import { useMutation, useQueryClient } from '@tanstack/react-query';
import { FaultList } from '../frame/FaultList.tsx';
import { request } from '../server/request.ts';
import { refreshMelts } from './refreshMelts.ts';

const place = ['deleted-melt'];

interface DeletedMelt {
  id: string;
  name: string;
}

/** Remembers a melt that was deleted, so that the list can offer to bring it back. */
export function useRememberDeleted(): (melt: DeletedMelt) => void {
  const client = useQueryClient();
  return (melt) => void client.setQueryData(place, melt);
}

/** The melt that was deleted last from this tab, and a way to bring it back. */
export function Deleted() {
  const client = useQueryClient();
  const melt = client.getQueryData<DeletedMelt | null>(place);
  const restore = useMutation({
    mutationFn: (id: string) => request(`/melts/${id}/restore`, { method: 'POST' }),
    onSuccess: async () => {
      client.setQueryData(place, null);
      await refreshMelts(client);
    },
  });
  if (!melt) return null;
  return (
    <>
      <p className="note row" role="status">
        “{melt.name}” was deleted.
        <button type="button" onClick={() => restore.mutate(melt.id)}>
          Bring it back
        </button>
      </p>
      <FaultList error={restore.error} what="It is still deleted, and nothing of it is lost." />
    </>
  );
}
