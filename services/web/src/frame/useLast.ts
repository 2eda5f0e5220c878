import { useState } from 'react';

/**
 * The newest value that was there: what was shown stays on the page while another answer is
 * fetched, and also when it cannot be had. `stale` says that the value is not the one asked for.
 */
export function useLast<Value>(value: Value | undefined): { value: Value | undefined; stale: boolean } {
  const [last, setLast] = useState(value);
  if (value !== undefined && value !== last) setLast(value);
  return { value: value ?? last, stale: value === undefined && last !== undefined };
}
