import type { ShortlistAct, ShortlistEntry } from '@tiegel/contract';

interface ConflictProps {
  entry: ShortlistEntry;
  disabled: boolean;
  act: (act: ShortlistAct) => void;
}

/** What two people set without knowing of each other, with a button for each way out. */
export function Conflict({ entry: { entry, status, removed }, disabled, act }: ConflictProps) {
  if (status.rivals.length === 0 && removed.rivals.length === 0) return null;
  return (
    <div className="note note-warning" role="status">
      {status.rivals.map(({ value, by, sequence }) => (
        <p key={sequence}>
          <b>Two said different things at the same time.</b> {status.by}: {status.value}; {by}: {value}.{' '}
          <button
            type="button"
            disabled={disabled}
            onClick={() => act({ kind: 'status', entry, status: status.value })}
          >
            Keep “{status.value}”
          </button>{' '}
          <button
            type="button"
            disabled={disabled}
            onClick={() => act({ kind: 'status', entry, status: value })}
          >
            Take “{value}”
          </button>
        </p>
      ))}
      {removed.rivals
        .filter(({ value }) => value)
        .map(({ by, sequence }) => (
          <p key={sequence}>
            <b>{by} took this alloy off the list</b> while somebody else wrote on it. It stays unless somebody
            takes it off again.{' '}
            <button type="button" disabled={disabled} onClick={() => act({ kind: 'restore', entry })}>
              Keep it on the list
            </button>
          </p>
        ))}
    </div>
  );
}
