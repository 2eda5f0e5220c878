import type { SearchView } from '@tiegel/contract';
import { useEffect, useRef } from 'react';
import { formatCount } from '../numbers/formatNumber.ts';
import { isUnfinished } from '../server/queries.ts';

/** Whether this browser can tell of something while its tab is out of sight, and may. */
export type Telling = 'impossible' | 'not asked' | 'allowed' | 'refused';

export function telling(): Telling {
  if (!('Notification' in globalThis)) return 'impossible';
  const { permission } = Notification;
  return permission === 'granted' ? 'allowed' : permission === 'denied' ? 'refused' : 'not asked';
}

/** Tells the end of a search that was seen running, by the browser's notification where that is allowed. */
export function useEndMessage(search: SearchView | undefined): void {
  const ran = useRef(false);
  useEffect(() => {
    if (search === undefined) return;
    if (isUnfinished(search)) {
      ran.current = true;
      return;
    }
    if (!ran.current) return;
    ran.current = false;
    if (document.visibilityState === 'hidden' && telling() === 'allowed') {
      const message = new Notification(search.name, { body: endInWords(search), tag: search.id });
      message.onclick = () => window.focus();
    }
  }, [search]);
}

/** The end of a search in a sentence. */
function endInWords({ state, kept, reason }: SearchView): string {
  if (state === 'done') return `The search is done: ${formatCount(kept)} candidates are kept.`;
  return `The search has ${state === 'failed' ? 'failed' : 'been cancelled'}${reason ? `: ${reason}` : '.'}`;
}
