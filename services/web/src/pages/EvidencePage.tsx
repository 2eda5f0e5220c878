import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { EstimateRecord } from '../evidence/EstimateRecord.tsx';
import '../evidence/evidence.css';
import { OwnEstimate } from '../evidence/OwnEstimate.tsx';
import { RecordTable } from '../evidence/RecordTable.tsx';
import { ownSource, publishedSource } from '../evidence/recordSource.ts';
import { StrengthRecord } from '../evidence/StrengthRecord.tsx';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { formatNumber } from '../numbers/formatNumber.ts';
import { evidenceQuery } from '../server/alloyQueries.ts';

/** How often rules, the phase estimate and strengths were right. */
export function EvidencePage() {
  useTitle('Evidence');
  const { data, error, refetch } = useQuery(evidenceQuery);
  if (error && !data) return <Failed error={error} what="The evidence" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Fetching the evidence" />;
  const { own } = data;
  const sources = [publishedSource(data.criteria), ...(own ? [ownSource(own)] : [])];
  return (
    <article className="column evidence-page">
      <header className="column">
        <h1>Evidence</h1>
        <p className="read">
          How often the published rules, the estimate of phases and the computed strengths were right.
          Everything is counted on <Link href="/data/alloys">published alloys</Link> by a script of this
          project; nothing is typed in from a paper.
        </p>
      </header>
      <section aria-labelledby="rules">
        <h2 id="rules">Published rules</h2>
        <p className="read-small">
          <b>Balanced accuracy</b> is the mean of how often a rule is right where the answer is yes and where
          it is no: a coin has {formatNumber(0.5, 2)}, the dashed line. The interval of 95 % comes from
          resampling whole systems. The sample holds alloys that people thought worth melting, most inside the
          windows already; so passing every rule proves little.
        </p>
        {own ? <p className="read-small">{own.trust}</p> : null}
        <RecordTable criteria={data.criteria} sources={sources} />
      </section>
      <EstimateRecord record={data.phaseEstimate} />
      {own ? (
        <OwnEstimate own={own} recalibration={data.recalibration} />
      ) : (
        <section aria-labelledby="own-estimate">
          <h2 id="own-estimate">The phase estimate on your own melts</h2>
          <p className="read-small">{data.recalibration.words}</p>
        </section>
      )}
      <StrengthRecord comparisons={data.strength} />
      <p className="small quiet read-small">
        Published alloys: Borg et al., Expanded dataset of mechanical properties and observed phases of
        multi-principal element alloys, Sci. Data 7 (2020) 430, doi:10.1038/s41597-020-00768-9; whole systems
        selected, labels as their publications report them.
      </p>
    </article>
  );
}
