import type { ShortlistAct, ShortlistEntry } from '@tiegel/contract';
import { parseAlloy, spacedComposition } from '@tiegel/elements';
import { formatInstant } from '../numbers/formatInstant.ts';

interface RemovedEntriesProps {
  entries: readonly ShortlistEntry[];
  disabled: boolean;
  act: (act: ShortlistAct) => void;
}

/** What was taken off the list, to be brought back with all its notes. */
export function RemovedEntries({ entries, disabled, act }: RemovedEntriesProps) {
  const gone = entries.filter(({ removed }) => removed.value);
  if (gone.length === 0) return null;
  return (
    <details>
      <summary>{gone.length} taken off the list</summary>
      <ul className="short-lists">
        {gone.map(({ entry, removed }) => (
          <li key={entry}>
            <span>
              {spacedComposition(parseAlloy(entry))}{' '}
              <span className="quiet">
                {removed.by}, {formatInstant(removed.at)}
              </span>
            </span>
            <button type="button" disabled={disabled} onClick={() => act({ kind: 'restore', entry })}>
              Bring it back
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
