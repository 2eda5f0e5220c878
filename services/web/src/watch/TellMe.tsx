import { useState } from 'react';
import { telling } from './telling.ts';

/** Offers a message of the browser for the end of a search; nothing where there is nothing to offer. */
export function TellMe() {
  const [state, setState] = useState(telling);
  if (state === 'impossible') return null;
  if (state === 'allowed') return <p className="quiet small">The browser will tell you when it has ended.</p>;
  if (state === 'refused') {
    return <p className="quiet small">The browser does not allow this page to tell you when it has ended.</p>;
  }
  return (
    <p>
      <button
        type="button"
        onClick={() => void Notification.requestPermission().then(() => setState(telling()))}
      >
        Tell me when it has ended
      </button>
    </p>
  );
}
