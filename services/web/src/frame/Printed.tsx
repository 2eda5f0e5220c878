import { formatInstant } from '../numbers/formatInstant.ts';

/** On paper: when and from where it was printed. */
export function Printed() {
  return (
    <p className="print-only">
      Printed {formatInstant(new Date())} from {window.location.href}
    </p>
  );
}
