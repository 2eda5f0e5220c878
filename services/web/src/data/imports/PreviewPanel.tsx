import { useVirtualizer } from '@tanstack/react-virtual';
import type { Fate, ImportPreview } from '@tiegel/contract';
import { useEffect, useRef } from 'react';
import { formatCount } from '../../numbers/formatNumber.ts';
import { useAddress } from '../useAddress.ts';
import { fates } from './fateWords.ts';

/** So many lost values are shown at once. */
const fewLost = 5;

/** The fate of every row: how many of each, and the rows of one fate or all. Only those in sight are drawn. */
export function PreviewPanel({ preview, stale }: { preview: ImportPreview; stale: boolean }) {
  const [address, change] = useAddress();
  const { rows, counts, faults, lost } = preview;
  const only = fates.find(({ id }) => id === address.get('fate'))?.id ?? null;
  const shown = only === null ? rows : rows.filter(({ fate }) => fate === only);
  return (
    <section
      className={stale ? 'column look-stale' : 'column'}
      aria-labelledby="fates-head"
      aria-busy={stale}
    >
      <h3 id="fates-head">What becomes of each row</h3>
      {faults.length > 0 ? (
        <div className="note note-danger" role="alert">
          <ul>
            {faults.map(({ detail, remedy, pointer }) => (
              <li key={pointer + detail}>
                {detail} {remedy}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {lost.length > 0 ? (
        <details className="note note-warning import-lost" open={lost.length <= fewLost || undefined}>
          <summary>
            {lost.length === 1 ? '1 value is' : `${formatCount(lost.length)} values are`} in force now and
            would not be any more: these rows take the place of the whole list.
          </summary>
          <ul>
            {lost.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </details>
      ) : null}
      {rows.length > 0 ? (
        <fieldset className="row fate-choice">
          <legend className="unseen">Rows shown</legend>
          <FateChoice
            words={`all ${formatCount(rows.length)}`}
            checked={only === null}
            onChoose={() => change({ fate: null })}
          />
          {fates.map(({ id, mark, says }) => (
            <FateChoice
              key={id}
              words={`${mark} ${formatCount(counts[id])} ${says}`}
              checked={only === id}
              onChoose={() => change({ fate: id })}
            />
          ))}
        </fieldset>
      ) : null}
      {rows.length > 0 && shown.length === 0 ? <p className="quiet">No row is of that kind.</p> : null}
      {shown.length > 0 ? <FateRows key={only} rows={shown} /> : null}
    </section>
  );
}

function FateChoice(props: { words: string; checked: boolean; onChoose: () => void }) {
  return (
    <label className="choice">
      <input type="radio" name="fate" checked={props.checked} onChange={props.onChoose} />
      {props.words}
    </label>
  );
}

function FateRows({ rows }: { rows: ImportPreview['rows'] }) {
  const scroll = useRef<HTMLElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroll.current,
    estimateSize: () => 34,
    overscan: 10,
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: other rows are of other heights
  useEffect(() => virtual.measure(), [rows]);
  const items = virtual.getVirtualItems();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <section className="fate-scroll" ref={scroll} tabIndex={0} aria-label="Rows">
      <ol className="fate-rows" style={{ blockSize: virtual.getTotalSize() }}>
        {items.map(({ index, start, key }) => {
          const { line, text, fate, before, faults } = rows[index]!;
          return (
            <li
              key={key}
              ref={virtual.measureElement}
              data-index={index}
              aria-posinset={index + 1}
              aria-setsize={rows.length}
              className={`fate-row fate-${fate}`}
              style={{ transform: `translateY(${start}px)` }}
            >
              <span className="quiet fate-line">line {line}</span>
              <FateMark fate={fate} />
              <span className="fate-text">
                <code>{text}</code>
                {before === null || fate === 'same' ? null : (
                  <span className="quiet fate-before">
                    before: <code>{before}</code>
                  </span>
                )}
                {faults.map(({ pointer, detail, remedy }) => (
                  <span key={pointer + detail} className="fate-fault">
                    {detail} {remedy}
                  </span>
                ))}
              </span>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function FateMark({ fate }: { fate: Fate }) {
  const { mark, word } = fates.find(({ id }) => id === fate)!;
  return (
    <b className="fate-mark">
      <span aria-hidden="true">{mark} </span>
      {word}
    </b>
  );
}
