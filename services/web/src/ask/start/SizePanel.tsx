import type { Size } from '@tiegel/contract';
import type { ReactNode } from 'react';
import { formatEstimate } from '../../numbers/formatDuration.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { asSentence } from '../../words/asSentence.ts';
import { fieldId, focusField } from '../faults/faultsContext.ts';
import type { PlacedFaults } from '../faults/placeFaults.ts';

interface SizePanelProps {
  /** null: not known (yet) */
  size: Size | null;
  /** parts of the space may be passed over: the search looks at so many at most */
  pruned: boolean;
  /** the numbers belong to the question before the last change */
  stale: boolean;
  faults: PlacedFaults;
  /** which part of the form a field belongs to */
  placeOf: (pointer: string) => string;
  /** what stands instead of numbers while there are none */
  hint: string;
  /** the button that starts the search */
  children: ReactNode;
}

/** The question in plain words, how large it is, what is wrong with it, and the way to start it. */
export function SizePanel({ size, pruned, stale, faults, placeOf, hint, children }: SizePanelProps) {
  const wrong = [...faults].flatMap(([pointer, texts]) =>
    texts.map((text) => ({ pointer, text: [placeOf(pointer), text].filter(Boolean).join(': ') })),
  );
  return (
    <section className="size" aria-labelledby="size-head">
      <h2 id="size-head">The question</h2>
      <div aria-live="polite" aria-busy={stale} className={stale ? 'size-live size-stale' : 'size-live'}>
        {wrong.length > 0 ? (
          <Wrong faults={wrong} />
        ) : size ? (
          <Counted size={size} pruned={pruned} />
        ) : (
          <p className="quiet">{hint}</p>
        )}
      </div>
      {children}
      <p className={wrong.length > 0 ? 'size-strip size-wrong' : 'size-strip'} aria-hidden="true">
        {wrong.length > 0
          ? `${wrong.length} to mend, below`
          : size
            ? `${formatCount(size.points)} compositions${size.seconds === null ? '' : `; ${formatEstimate(size.seconds)}`}`
            : 'Nothing to count yet'}
      </p>
    </section>
  );
}

function Wrong({ faults }: { faults: readonly { pointer: string; text: string }[] }) {
  return (
    <div className="size-wrong">
      <p>{faults.length === 1 ? 'One thing to mend:' : `${faults.length} things to mend:`}</p>
      <ul>
        {faults.map(({ pointer, text }) => (
          <li key={pointer + text}>
            {pointer === '' ? (
              text
            ) : (
              <a
                href={`#${fieldId(pointer)}`}
                onClick={(event) => {
                  event.preventDefault();
                  focusField(pointer);
                }}
              >
                {text}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

function Counted({ size, pruned }: { size: Size; pruned: boolean }) {
  const { systems, points, seconds, workers, question, notices } = size;
  return (
    <>
      <p>{asSentence(question)}</p>
      <dl className="size-numbers">
        <div>
          <dt>Systems</dt>
          <dd>{formatCount(systems)}</dd>
        </div>
        <div>
          <dt>{pruned ? 'Compositions to test, at most' : 'Compositions to test'}</dt>
          <dd>{formatCount(points)}</dd>
        </div>
        <div>
          <dt>{pruned ? 'Time, at most' : 'Time'}</dt>
          <dd>{seconds === null ? 'not known' : formatEstimate(seconds)}</dd>
        </div>
      </dl>
      <p className="small quiet">
        {workers === 0
          ? 'No worker is present: the search would wait for one.'
          : `An estimate for the ${workers === 1 ? 'one worker' : `${workers} workers`} present, if nothing else runs.`}
      </p>
      {notices.map((notice) => (
        <p key={notice} className="note small">
          {notice}
        </p>
      ))}
    </>
  );
}
