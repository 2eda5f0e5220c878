import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ImportKind, ImportVersion } from '@tiegel/contract';
import { useRef } from 'react';
import { randomKey } from '../../server/randomKey.ts';
import { request } from '../../server/request.ts';

interface Stored {
  kind: ImportKind;
  name: string;
  text: string;
}

/** Stores rows of one's own. The same ones sent again after a lost answer are stored once. */
export function useStoreImport(onStored: (version: ImportVersion) => void) {
  const client = useQueryClient();
  const sent = useRef({ what: '', key: '' });
  return useMutation({
    mutationFn: ({ kind, name, text }: Stored) => {
      const what = JSON.stringify([kind, name, text]);
      if (sent.current.what !== what) sent.current = { what, key: randomKey() };
      const asked = new URLSearchParams({ kind, ...(name.trim() === '' ? {} : { name: name.trim() }) });
      return request<ImportVersion>(`/imports?${asked}`, {
        method: 'POST',
        body: text,
        type: 'text/csv',
        headers: { 'idempotency-key': sent.current.key },
      });
    },
    onSuccess: async (version) => {
      sent.current = { what: '', key: '' };
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
