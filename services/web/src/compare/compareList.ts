import { useSyncExternalStore } from 'react';

const place = 'tiegel.compare';

/** More cannot be read side by side. */
export const mostCompared = 6;

const listeners = new Set<() => void>();
let known: { text: string | null; list: readonly string[] } = { text: null, list: [] };

/** The canonical texts of the alloys that were chosen for a comparison, in this browser. */
function read(): readonly string[] {
  const text = localStorage.getItem(place);
  if (text !== known.text) known = { text, list: (text ?? '').split(' ').filter(Boolean) };
  return known.list;
}

/** Remembers another list, at most six. */
export function rememberCompared(list: readonly string[]): void {
  localStorage.setItem(place, list.slice(0, mostCompared).join(' '));
  for (const listener of listeners) listener();
}

/** The list, which follows changes in other tabs, and how to put an alloy in or take it out. */
export function useCompareList(): { list: readonly string[]; toggle: (text: string) => void } {
  const list = useSyncExternalStore((onChange) => {
    listeners.add(onChange);
    window.addEventListener('storage', onChange);
    return () => {
      listeners.delete(onChange);
      window.removeEventListener('storage', onChange);
    };
  }, read);
  const toggle = (text: string) =>
    rememberCompared(list.includes(text) ? list.filter((one) => one !== text) : [...list, text]);
  return { list, toggle };
}
