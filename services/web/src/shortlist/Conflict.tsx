import type { ShortlistAct, ShortlistEntry } from '@tiegel/contract';
import { conflictsOf, type ShortlistConflict } from '@tiegel/contract/terms';

interface ConflictProps {
  entry: ShortlistEntry;
  disabled: boolean;
  act: (act: ShortlistAct) => void;
}

/** What people set without knowing of each other, with a button for each way out. */
export function Conflict({ entry, disabled, act }: ConflictProps) {
  const conflicts = conflictsOf({ entries: [entry] });
  if (conflicts.length === 0) return null;
  return (
    <div className="note note-warning" role="status">
      {conflicts.map((conflict) =>
        conflict.about === 'status' ? (
          <OnStatus key="status" {...{ conflict, disabled, act }} />
        ) : (
          <OnRemoval key="removal" {...{ conflict, disabled, act }} />
        ),
      )}
    </div>
  );
}

interface OneConflictProps<About extends ShortlistConflict['about']> extends Omit<ConflictProps, 'entry'> {
  conflict: Extract<ShortlistConflict, { about: About }>;
}

function OnStatus({ conflict: { entry, versions }, disabled, act }: OneConflictProps<'status'>) {
  const said = versions.map(({ by, value }) => `${by}: ${value}`).join('; ');
  return (
    <>
      <p>
        <b>{versions.length === 2 ? 'Two' : 'Several'} said different things at the same time.</b> {said}.
      </p>
      <p className="row">
        {versions.map(({ value: status, holds }) => (
          <button
            key={status}
            type="button"
            disabled={disabled}
            onClick={() => act({ kind: 'status', entry, status })}
          >
            {holds ? 'Keep' : 'Take'} “{status}”
          </button>
        ))}
      </p>
    </>
  );
}

function OnRemoval({ conflict: { entry, versions }, disabled, act }: OneConflictProps<'removal'>) {
  const by = versions.filter(({ holds }) => !holds).map((one) => one.by);
  return (
    <p>
      <b>{[...new Set(by)].join(' and ')} took this alloy off the list</b> while somebody else wrote on it. It
      stays unless somebody takes it off again.{' '}
      <button type="button" disabled={disabled} onClick={() => act({ kind: 'restore', entry })}>
        Keep it on the list
      </button>
    </p>
  );
}
