import { useEffect, useState } from 'react';

/** A value once it has not changed for a moment: what is typed is not asked at every key. */
export function useSettled<T>(value: T, milliseconds = 250): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), milliseconds);
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return settled;
}
