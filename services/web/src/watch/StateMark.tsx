import type { SearchState } from '@tiegel/contract';
import { stateWords } from './stateWords.ts';

/** The state of a search: sign and word. */
export function StateMark({ state }: { state: SearchState }) {
  const { sign, word } = stateWords[state];
  return (
    <span className={`state state-${state}`}>
      <span aria-hidden="true">{sign}</span> {word}
    </span>
  );
}
