import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { AccessView } from '@tiegel/contract';
import { roleInWords } from '@tiegel/contract/terms';
import { accessQuery } from '../server/queries.ts';
import { request } from '../server/request.ts';
import { takeAccess } from './takeAccess.ts';

/** Who is signed in, and the way out; nothing where the server asks nobody. */
export function SignedIn() {
  const { data } = useQuery(accessQuery);
  const client = useQueryClient();
  const signOut = useMutation({
    mutationFn: () => request<AccessView>('/access', { method: 'DELETE' }),
    onSuccess: (view) => takeAccess(client, view),
  });
  if (!data?.name || !data.role) return null;
  return (
    <span className="head-holder">
      <span title={`May ${roleInWords(data.role)}`}>
        {data.name} <span className="quiet">({data.role})</span>
      </span>
      <button
        type="button"
        className="button-plain"
        disabled={signOut.isPending}
        onClick={() => signOut.mutate()}
      >
        Sign out
      </button>
    </span>
  );
}
