/** Something is on its way. Appears only after a moment (frame.css), so that what is quick does not flicker. */
export function Waiting({ what }: { what: string }) {
  return (
    <p className="waiting quiet" role="status">
      {what} …
    </p>
  );
}
