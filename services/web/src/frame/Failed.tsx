import { Link } from 'wouter';
import { NoAnswer, ServerProblem } from '../server/request.ts';

interface FailedProps {
  error: unknown;
  /** what could not be shown: 'The list of searches' */
  what: string;
  /** asks again */
  onRetry?: () => void;
  /** where all that there are are listed: offered where this one does not exist */
  list?: { to: string; name: string };
}

/** Says what could not be shown, what is safe, and what to do. */
export function Failed({ error, what, onRetry, list }: FailedProps) {
  const gone = error instanceof ServerProblem && error.status === 404 && list !== undefined;
  const remedy =
    error instanceof ServerProblem && !gone ? error.faults.map((fault) => fault.remedy).join(' ') : '';
  return (
    <div className="note note-danger" role="alert">
      <p>
        <b>{what} cannot be shown.</b> {error instanceof Error ? error.message : String(error)} {remedy}
      </p>
      {error instanceof NoAnswer ? (
        <p>
          Searches that run are not lost: they go on when the server is started again (npm start). This page
          asks again by itself.
        </p>
      ) : null}
      {gone ? (
        <p>
          See that the address is whole, or look for it among <Link href={list.to}>{list.name}</Link>.
        </p>
      ) : null}
      {onRetry && !gone ? (
        <p>
          <button type="button" onClick={onRetry}>
            Ask again
          </button>
        </p>
      ) : null}
    </div>
  );
}
