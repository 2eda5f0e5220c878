import { Fragment } from 'react';

/** A symbol or formula of plain text, with what follows an underscore set low and a bracketed power high: T_m, Δχ_A, V^(2/3). */
export function Notation({ text }: { text: string }) {
  const [start = '', ...parts] = text.split('_');
  return (
    <>
      <Powers text={start} />
      {parts.map((part, index) => {
        const low = /^[\p{L}\p{N}]+/u.exec(part)?.[0] ?? '';
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a fixed text never change places
          <Fragment key={index}>
            <sub>{low}</sub>
            <Powers text={part.slice(low.length)} />
          </Fragment>
        );
      })}
    </>
  );
}

function Powers({ text }: { text: string }) {
  return text.split(/\^\(([^()]+)\)/).map((part, index) =>
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a fixed text never change places
    index % 2 === 1 ? <sup key={index}>{part}</sup> : part,
  );
}
