import { useSyncExternalStore } from 'react';

const place = 'tiegel.person.1';
const listeners = new Set<() => void>();

/** Who sits at this browser, as they want to be called; '' until they said it. */
function person(): string {
  try {
    return localStorage.getItem(place) ?? '';
  } catch {
    return '';
  }
}

function setPerson(name: string): void {
  try {
    localStorage.setItem(place, name);
  } catch {
    // A browser that refuses storage asks again on the next page.
  }
  for (const listener of listeners) listener();
}

/** The name, and how to change it; every part of the page that shows it follows. */
export function usePerson(): [string, (name: string) => void] {
  const name = useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, person);
  return [name, setPerson];
}
