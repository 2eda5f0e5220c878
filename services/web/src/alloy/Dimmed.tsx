import type { ReactNode } from 'react';
import type { AlloyState } from './state/alloyState.ts';

/** What the server said, dimmed while that is of the composition before the last change; says so, and why if no answer comes. */
export function Dimmed({ alloy, children }: { alloy: AlloyState; children: ReactNode }) {
  const { stale, error, retry } = alloy;
  return (
    <div className={stale ? 'dimmed' : undefined} aria-busy={stale && !error}>
      {stale ? (
        <p className="dimmed-note small" role="status">
          {error ? (
            <>
              This is of the composition before: {error instanceof Error ? error.message : String(error)}{' '}
              <button type="button" onClick={retry}>
                Ask again
              </button>
            </>
          ) : (
            'Of the composition before; the new answer is on its way …'
          )}
        </p>
      ) : null}
      <div className="dimmed-content">{children}</div>
    </div>
  );
}
