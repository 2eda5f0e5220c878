import { NoAnswer, ServerProblem } from '../server/request.ts';

interface FailedProps {
  error: unknown;
  /** what could not be shown: 'The list of searches' */
  what: string;
  /** asks again */
  onRetry?: () => void;
}

/** Says what could not be shown, what is safe, and what to do. */
export function Failed({ error, what, onRetry }: FailedProps) {
  const remedy = error instanceof ServerProblem ? error.faults.map((fault) => fault.remedy).join(' ') : '';
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
      {onRetry ? (
        <p>
          <button type="button" onClick={onRetry}>
            Ask again
          </button>
        </p>
      ) : null}
    </div>
  );
}
