import { NoAnswer, ServerProblem } from '../server/request.ts';
import { useInSight } from './useInSight.ts';

interface FaultListProps {
  error: unknown;
  /** what is safe, or still holds */
  what: string;
  /** the same where no answer came to something that is to be stored: it may have been stored all the same */
  unsure?: string;
  /** nobody pressed anything for it: the page does not move to it */
  inBackground?: boolean;
}

/** What went wrong with something a person asked for, where, and what would be right, brought into sight. Nothing where nothing did. */
export function FaultList({ error, what, unsure = what, inBackground = false }: FaultListProps) {
  const place = useInSight<HTMLDivElement>(error instanceof Error && !inBackground ? error : null);
  if (!error) return null;
  const faults = error instanceof ServerProblem ? error.faults : [];
  return (
    <div ref={place} className="note note-danger" role="alert">
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
