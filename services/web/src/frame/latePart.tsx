import { type ComponentType, lazy } from 'react';

/**
 * A part of a page whose code is fetched when it is needed. Where it cannot be fetched the rest of the page
 * stays as it is. A browser remembers for as long as a page is open that a module could not be fetched, so
 * asking again would be in vain.
 */
export function latePart<Props>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  return lazy(async () => ({
    default: await load().catch(() => NotFetched),
  })) as unknown as ComponentType<Props>;
}

function NotFetched() {
  return (
    <p className="note note-danger small" role="alert">
      A part of this page could not be fetched from the server. What you entered is kept in this browser tab.{' '}
      <button type="button" onClick={() => window.location.reload()}>
        Load again
      </button>
    </p>
  );
}
