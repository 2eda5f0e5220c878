import { NoAnswer, ServerProblem } from '../server/request.ts';

interface FaultListProps {
  error: unknown;
  /** what is safe, or still holds */
  what: string;
  /** the same where no answer came to something that is to be stored: it may have been stored all the same */
  unsure?: string;
}

/** What went wrong with something a person asked for, where, and what would be right. Nothing where nothing did. */
export function FaultList({ error, what, unsure = what }: FaultListProps) {
  if (!error) return null;
  const faults = error instanceof ServerProblem ? error.faults : [];
  return (
    <div className="note note-danger" role="alert">
      {faults.length > 0 ? (
        <ul>
          {faults.map(({ pointer, detail, remedy }) => (
            <li key={pointer + detail}>
              {pointer ? <code>{pointer}</code> : null} {detail} {remedy}
            </li>
          ))}
        </ul>
      ) : (
        <p>
          {error instanceof Error ? error.message : String(error)}
          {error instanceof NoAnswer ? ' See that it runs, then try again.' : ''}
        </p>
      )}
      <p>{error instanceof NoAnswer ? unsure : what}</p>
    </div>
  );
}
