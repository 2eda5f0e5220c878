import type { SearchView } from '@tiegel/contract';
import { formatCount } from '../numbers/formatNumber.ts';

/** The end of a search in a sentence. */
export function endInWords({ state, kept, reason }: SearchView): string {
  if (state === 'done')
    return kept === 1
      ? 'It is done: 1 candidate is kept.'
      : `It is done: ${formatCount(kept)} candidates are kept.`;
  return `It ${state === 'failed' ? 'has failed' : 'was cancelled'}${reason ? `: ${reason}` : '.'}`;
}
