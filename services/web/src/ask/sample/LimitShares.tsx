import { useContext } from 'react';
import { shareInWords } from '../../numbers/shareInWords.ts';
import { tightest } from './countPasses.ts';
import { SampleContext } from './sampleContext.ts';

/** What one limit leaves of the space, alone and on top of the others. */
export function LimitShares({ index, values }: { index: number; values: readonly (number | null)[] }) {
  const { sample, passes } = useContext(SampleContext);
  const own = passes?.each[index];
  if (!sample || !passes || !own) return null;
  const words = (hits: number) => shareInWords(hits, sample.size, sample.whole);
  const missing = values.reduce<number>((sum, value) => (value === null ? sum + 1 : sum), 0);
  const others = passes.each.length > 1;
  return (
    <dl className="limit-shares small">
      <div>
        <dt>Alone it leaves</dt>
        <dd>{words(own.alone)}</dd>
      </div>
      {others ? (
        <div>
          <dt>Without it would be left</dt>
          <dd>{words(own.others)}</dd>
        </div>
      ) : null}
      {others && tightest(passes) === index ? (
        <div className="limit-tightest">
          <dt>
            <span aria-hidden="true">◀ </span>The tightest: with all others it leaves
          </dt>
          <dd>{words(passes.all)}</dd>
        </div>
      ) : null}
      {missing > 0 ? (
        <div>
          <dt>Without a value, which fails</dt>
          <dd>{words(missing)}</dd>
        </div>
      ) : null}
    </dl>
  );
}
