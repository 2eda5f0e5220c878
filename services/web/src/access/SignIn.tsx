import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { AccessView } from '@tiegel/contract';
import { useEffect, useId, useRef, useState } from 'react';
import { FaultList } from '../frame/FaultList.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { post } from '../server/request.ts';
import { takeAccess } from './takeAccess.ts';

/** Asks who sits here, in the place of the page that the address names; that page follows. */
export function SignIn() {
  useTitle('Sign in');
  const client = useQueryClient();
  const [token, setToken] = useState('');
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  // There is nothing else to do here, and by keys the field lies behind the whole head.
  useEffect(() => field.current?.focus(), []);
  const signIn = useMutation({
    mutationFn: () => post<AccessView>('/access', { token }),
    onSuccess: (view) => takeAccess(client, view),
  });
  return (
    <form
      className="column sign-in"
      onSubmit={(event) => {
        event.preventDefault();
        signIn.mutate();
      }}
    >
      <h1>Sign in</h1>
      <p id={`${id}-why`}>
        This server asks who you are. Your token is the long word that begins with “tiegel_”.
      </p>
      <p className="row">
        <label htmlFor={id}>Token</label>
        <input
          ref={field}
          id={id}
          aria-describedby={`${id}-why`}
          type="password"
          required
          maxLength={200}
          autoComplete="current-password"
          spellCheck={false}
          value={token}
          onChange={(event) => setToken(event.target.value)}
        />
        <button type="submit" className="button-main" disabled={signIn.isPending}>
          Sign in
        </button>
      </p>
      <p className="quiet">
        You have none? Whoever keeps this server gives them out, with the command <code>access give</code>.
        This browser stays signed in for 30 days, or until you sign out.
      </p>
      <FaultList error={signIn.error} what="You are not signed in." />
    </form>
  );
}
