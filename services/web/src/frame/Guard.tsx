import { Component, type ReactNode } from 'react';
import { NoAnswer } from '../server/request.ts';

/** Keeps the head of the site when a page breaks on something that nobody foresaw, and says what is safe. */
export class Guard extends Component<{ children: ReactNode }, { error: Error | null }> {
  override state: { error: Error | null } = { error: null };

  static getDerivedStateFromError(error: Error): { error: Error } {
    return { error };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return (
      <div className="note note-danger" role="alert">
        {error instanceof NoAnswer ? (
          <p>
            <b>This page could not be fetched.</b> {error.message} Searches that run are not lost, and a form
            is kept in this browser tab. See that the server runs (npm start), then load again.
          </p>
        ) : (
          <p>
            <b>This page broke.</b> Searches and results are not touched, and a form is kept in this browser
            tab. Load the page again; if it breaks again, report these words: {error.message}
          </p>
        )}
        <p>
          <button type="button" onClick={() => window.location.reload()}>
            Load again
          </button>
        </p>
      </div>
    );
  }
}
