import { useSyncExternalStore } from 'react';
import { onSharedText, sharedText, shareText } from '../frame/sharedText.ts';

const place = 'tiegel.person.1';

/** Who sits at this browser, as they want to be called; '' until they said it. */
const person = () => sharedText(place) ?? '';

const setPerson = (name: string) => shareText(place, name);

/** The name, and how to change it; every part of the page that shows it follows. */
export function usePerson(): [string, (name: string) => void] {
  return [useSyncExternalStore(onSharedText, person), setPerson];
}
