import { Fragment } from 'react';

/** A symbol or formula of plain text, with what follows an underscore set low: T_m, Δχ_A. */
export function Notation({ text }: { text: string }) {
  const [start, ...parts] = text.split('_');
  return (
    <>
      {start}
      {parts.map((part, index) => {
        const low = /^[\p{L}\p{N}]+/u.exec(part)?.[0] ?? '';
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a fixed text never change places
          <Fragment key={index}>
            <sub>{low}</sub>
            {part.slice(low.length)}
          </Fragment>
        );
      })}
    </>
  );
}
