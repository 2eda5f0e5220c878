import { useContext } from 'react';
import { formatCount } from '../../numbers/formatNumber.ts';
import { countInWords, shareInWords } from '../../numbers/shareInWords.ts';
import { NoAnswer } from '../../server/request.ts';
import { useSettled } from '../useSettled.ts';
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
  const share = shareInWords(passes.all, size, whole);
  const count = countInWords(passes.all, size, points, whole);
  const none = passes.all === 0 ? nothingLeft(passes.each) : '';
  return (
    <div className={stale ? 'sample-summary sample-stale' : 'sample-summary'}>
      <p aria-hidden="true">
        All limits together leave <b>{share}</b> of the space: {count}.
      </p>
      <Spoken text={`All limits together leave ${share} of the space: ${count}. ${none}`} />
      {none === '' ? null : <p aria-hidden="true">{none}</p>}
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

/** The same for those who listen, once a limit rests: while it is dragged every step would be read. */
function Spoken({ text }: { text: string }) {
  return (
    <p className="unseen" role="status">
      {useSettled(text, 1000)}
    </p>
  );
}

function nothingLeft(each: readonly { others: number }[]): string {
  return each.every(({ others }) => others === 0)
    ? 'No single limit is to blame: none was drawn that fails only one of them. Loosen several, or draw more.'
    : 'Loosen the limit that is marked as the tightest: without it some would be left.';
}
