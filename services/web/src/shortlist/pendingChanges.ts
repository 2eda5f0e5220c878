import type { ShortlistChange } from '@tiegel/contract';
import { sharedValue, shareText } from '../frame/sharedText.ts';

const placeOf = (id: string) => `tiegel.shortlist.${id}.1`;

const changesAt = sharedValue<readonly ShortlistChange[]>((text) => JSON.parse(text), []);

/**
 * Changes of a shortlist that this browser has made and the server has not answered yet. They
 * survive a reload and an hour without a connection, and are sent in their order. Without storage
 * a reload loses what was not sent; the page says that it is not sent.
 */
export const pendingChanges = (id: string): readonly ShortlistChange[] => changesAt(placeOf(id));

export function addPending(id: string, changes: readonly ShortlistChange[]): void {
  keep(id, [...pendingChanges(id), ...changes]);
}

/** Takes away what the server has answered, by key. */
export function settle(id: string, keys: ReadonlySet<string>): void {
  keep(
    id,
    pendingChanges(id).filter(({ key }) => !keys.has(key)),
  );
}

const keep = (id: string, changes: readonly ShortlistChange[]): void =>
  shareText(placeOf(id), changes.length === 0 ? '' : JSON.stringify(changes));
