import { useContext } from 'react';
import { formatCount } from '../../numbers/formatNumber.ts';
import { countInWords, shareInWords } from '../../numbers/shareInWords.ts';
import { NoAnswer } from '../../server/request.ts';
import { SampleContext } from './sampleContext.ts';
import { largest } from './useSample.ts';

/** What all limits leave together, and how far the sample that says so is to be trusted. */
export function SampleSummary() {
  const { sample, passes, stale, error, drawMore } = useContext(SampleContext);
  if (error instanceof NoAnswer) {
    return (
      <p className="small quiet">
        No sample could be drawn: the server does not answer. The limits hold as they are typed; the page asks
        again by itself.
      </p>
    );
  }
  if (!sample || !passes || passes.each.length === 0) return null;
  const { size, points, whole } = sample;
  const more = !whole && size < Math.min(largest, points);
  return (
    <div className={stale ? 'sample-summary sample-stale' : 'sample-summary'} aria-live="polite">
      <p>
        All limits together leave <b>{shareInWords(passes.all, size, whole)}</b> of the space
        {': '}
        {countInWords(passes.all, size, points, whole)}.
      </p>
      {passes.all === 0 ? <p>{nothingLeft(passes.each)}</p> : null}
      <p className="small quiet">
        {whole
          ? `All ${formatCount(points)} compositions were looked at: these shares are exact.`
          : `From a random sample of ${formatCount(size)} compositions, each equally likely; ± is the 95 % interval. The search itself tests and counts every composition.`}{' '}
        Grey: the whole space. Coloured: what meets all other limits.
      </p>
      {more ? (
        <button type="button" onClick={drawMore}>
          Draw {formatCount(Math.min(largest, points))} compositions
        </button>
      ) : null}
    </div>
  );
}

function nothingLeft(each: readonly { others: number }[]): string {
  return each.every(({ others }) => others === 0)
    ? 'No single limit is to blame: none was drawn that fails only one of them. Loosen several, or draw more.'
    : 'Loosen the limit that is marked as the tightest: without it some would be left.';
}
