import { mostCompared } from '@tiegel/contract/terms';
import { useSyncExternalStore } from 'react';
import { onSharedText, sharedValue, shareText } from '../frame/sharedText.ts';

const place = 'tiegel.compare';

const listAt = sharedValue<readonly string[]>((text) => text.split(' ').filter(Boolean), []);

/** Remembers another list, at most six. */
export function rememberCompared(list: readonly string[]): void {
  shareText(place, list.slice(0, mostCompared).join(' '));
}

/**
 * The canonical texts of the alloys that were chosen for a comparison, in this browser, and how to put an alloy
 * in or take it out.
 */
export function useCompareList(): { list: readonly string[]; toggle: (text: string) => void } {
  const list = useSyncExternalStore(onSharedText, () => listAt(place));
  const toggle = (text: string) =>
    rememberCompared(list.includes(text) ? list.filter((one) => one !== text) : [...list, text]);
  return { list, toggle };
}
