import type { Explanation } from '@tiegel/contract';
import { Link } from 'wouter';
import { formatInterval } from '../../numbers/formatInterval.ts';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';

interface OwnPhaseProps {
  own: Explanation['own'];
  /** what the estimate says of one solution, null without a basis */
  published: number | null;
}

/** The estimate of one solution recalibrated on one's own melts, beside the published one; or what is missing for it. */
export function OwnPhase({ own, published }: OwnPhaseProps) {
  if (own === null) return null;
  const { singleSolution, interval, recalibration, basis } = own;
  const { melts } = recalibration.counted;
  return (
    <section className="own-phase" aria-labelledby="own-phase">
      <h3 id="own-phase">One solution, by your own melts</h3>
      {singleSolution === null || interval === null || published === null ? null : (
        <dl className="record-list">
          <div>
            <dt>Published estimate</dt>
            <dd>{formatNumber(published, 2)}</dd>
          </div>
          <div>
            <dt>Recalibrated on {formatCount(melts)} melts (95 %)</dt>
            <dd>
              {formatNumber(singleSolution, 2)} ({formatInterval(interval[0], interval[1], 2)})
            </dd>
          </div>
        </dl>
      )}
      <p className="read-small">{basis}</p>
      <p className="screen-only">
        <Link href="/melts">Your melts</Link>
      </p>
    </section>
  );
}
