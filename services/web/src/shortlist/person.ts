import { useQuery } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { onSharedText, sharedText, shareText } from '../frame/sharedText.ts';
import { accessQuery } from '../server/queries.ts';

const place = 'tiegel.person.1';

/** Who sits at this browser, as they want to be called; '' until they said it. */
const person = () => sharedText(place) ?? '';

const setPerson = (name: string) => shareText(place, name);

/**
 * The name, and how to change it; every part of the page that shows it follows. Whoever is signed in has the name of
 * their token, which stands by what they change whatever a page says: null in place of the way to change it.
 */
export function usePerson(): [string, ((name: string) => void) | null] {
  const typed = useSyncExternalStore(onSharedText, person);
  const { data } = useQuery(accessQuery);
  return data?.name ? [data.name, null] : [typed, setPerson];
}
