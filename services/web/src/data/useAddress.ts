import { useCallback, useMemo } from 'react';
import { useLocation, useSearch } from 'wouter';

/** The search part of the address, where the state of a view stands; changes replace it, '' and null leave a key out. */
export function useAddress(): [
  URLSearchParams,
  (part: Record<string, string | null>) => void,
] {
  const [path, navigate] = useLocation();
  const text = useSearch();
  const address = useMemo(() => new URLSearchParams(text), [text]);
  const change = useCallback(
    (part: Record<string, string | null>) => {
      const next = new URLSearchParams(text);
      for (const [key, value] of Object.entries(part)) {
        if (value === null || value === '') next.delete(key);
        else next.set(key, value);
      }
      const written = next.toString().replaceAll('%2C', ',');
      navigate(written === '' ? path : `${path}?${written}`, { replace: true });
    },
    [navigate, path, text],
  );
  return [address, change];
}
