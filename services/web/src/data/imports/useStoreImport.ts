import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ImportKind, ImportVersion } from '@tiegel/contract';
import { request } from '../../server/request.ts';
import { forgetSent, sentKey } from '../../server/sentKey.ts';

interface Stored {
  kind: ImportKind;
  name: string;
  text: string;
}

/** Stores rows of one's own. The same ones sent again after a lost answer are stored once. */
export function useStoreImport(onStored: (version: ImportVersion) => void) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ kind, name, text }: Stored) => {
      const key = sentKey('sessionStorage', 'import', JSON.stringify([kind, name, text]));
      const asked = new URLSearchParams({ kind, ...(name.trim() === '' ? {} : { name: name.trim() }) });
      return request<ImportVersion>(`/imports?${asked}`, {
        method: 'POST',
        body: text,
        type: 'text/csv',
        headers: { 'idempotency-key': key },
      });
    },
    onSuccess: async (version) => {
      forgetSent('sessionStorage', 'import');
      onStored(version);
      // Every value on every page may follow from what was stored.
      await client.invalidateQueries();
    },
  });
}

/** Withdraws an import, or brings it back. */
export function useForce(number: number) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (back: boolean) =>
      request(`/imports/${number}${back ? '/restore' : ''}`, { method: back ? 'POST' : 'DELETE' }),
    onSuccess: () => client.invalidateQueries(),
  });
}
