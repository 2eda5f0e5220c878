import type { SearchView } from '@tiegel/contract';
import { formatEstimate } from '../numbers/formatDuration.ts';
import { formatCount, formatPercent } from '../numbers/formatNumber.ts';
import { SearchControls } from './SearchControls.tsx';
import { StateMark } from './StateMark.tsx';

/** How far an unfinished search is, how fast, how long still, and the ways to hold or stop it. */
export function ProgressPanel({ search }: { search: SearchView }) {
  const { state, reason, progress, rate, secondsLeft } = search;
  const percent = formatPercent(progress.points, progress.total);
  return (
    <section className="progress" aria-labelledby="progress-head">
      <h2 id="progress-head" className="row">
        <StateMark state={state} />
        <span>{percent}</span>
      </h2>
      {reason ? <p className="note note-warning">{reason}</p> : null}
      <progress max={progress.total} value={progress.points} aria-label="Compositions tested">
        {percent}
      </progress>
      <p>
        {formatCount(progress.points)} of {formatCount(progress.total)} compositions tested
        {rate === null ? null : ` · ${formatCount(Math.round(rate))} a second`}
        {secondsLeft === null ? null : ` · ${formatEstimate(secondsLeft)} left`}
      </p>
      <Spoken search={search} />
      <SearchControls search={search} />
      {state === 'running' || state === 'waiting' ? (
        <p className="quiet">
          The search goes on when this page is closed, and after a restart of the server.
        </p>
      ) : null}
    </section>
  );
}

/** Progress for those who listen: a sentence at each tenth, not at each change. */
function Spoken({ search: { state, progress } }: { search: SearchView }) {
  const tenths = progress.total === 0 ? 0 : Math.floor((10 * progress.points) / progress.total);
  return (
    <p className="unseen" role="status">
      {state === 'running' ? `${10 * tenths} percent tested` : `The search is ${state}`}
    </p>
  );
}
