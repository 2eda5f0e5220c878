import { useEffect, useRef } from 'react';

export interface Key {
  keys: string;
  does: string;
}

const everywhere: Key[] = [
  { keys: 'Tab, Shift+Tab', does: 'to the next or the last control' },
  { keys: '?', does: 'shows this list' },
  { keys: 'Escape', does: 'closes what lies above the page' },
];

/** The keys of the page, opened by ? or the button in the head; the browser closes it on Escape. */
export function KeysDialog({
  keys,
  open,
  onClose,
}: {
  keys: readonly Key[];
  open: boolean;
  onClose: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  return (
    <dialog ref={dialog} className="keys" aria-labelledby="keys-head" onClose={onClose}>
      <h2 id="keys-head">Keys of this page</h2>
      <dl>
        {[...keys, ...everywhere].map(({ keys: pressed, does }) => (
          <div key={pressed + does}>
            <dt>
              {pressed.split(', ').map((one) => (
                <kbd key={one}>{one}</kbd>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <button type="button" onClick={onClose}>
        Close
      </button>
    </dialog>
  );
}
