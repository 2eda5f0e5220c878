import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { Failed } from '../frame/Failed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { Deleted } from '../melt/Deleted.tsx';
import '../melt/melt.css';
import { meltsQuery } from '../melt/meltQueries.ts';
import { labelInWords } from '../melt/phaseInWords.ts';
import { formatInstant } from '../numbers/formatInstant.ts';
import { formatNumber } from '../numbers/formatNumber.ts';

/** Every melt of the laboratory, the newest first. */
export function MeltsPage() {
  useTitle('Melts');
  const { data, error, refetch, dataUpdatedAt } = useQuery(meltsQuery);
  return (
    <div className="column">
      <div className="row">
        <h1>Melts</h1>
        <Link href="/melts/new" className="button">
          Record a melt
        </Link>
      </div>
      <Deleted />
      {error && !data ? (
        <Failed error={error} what="The list of melts" onRetry={() => void refetch()} />
      ) : null}
      {error && data ? (
        <p className="note" role="status">
          This is what was recorded at {formatInstant(new Date(dataUpdatedAt))}; nothing newer is known.
        </p>
      ) : null}
      {!data && !error ? <Waiting what="Fetching the melts" /> : null}
      {data?.length === 0 ? (
        <p className="read">
          No melt has been recorded here yet. <Link href="/melts/new">Record one</Link>: what was weighed, how
          it was melted, what was seen. Melts with observed phases become evidence for and against the rules
          and the phase estimate.
        </p>
      ) : null}
      <ul>
        {data?.map((melt) => (
          <li key={melt.id} className="melt-line">
            <span>
              <Link href={`/melts/${melt.id}`}>{melt.name === '' ? `Melt of ${melt.date}` : melt.name}</Link>
              <span className="quiet"> {melt.date}</span>
            </span>
            <span>
              <Shares composition={melt.composition} decimals={2} /> <span className="quiet">at.%</span>
              <ShareBar composition={melt.composition} />
            </span>
            <span>
              <b>{labelInWords(melt.label)}</b>
              {melt.hardness === null ? '' : `, ${formatNumber(melt.hardness, 0)} HV`}
              {melt.charge === null ? '' : `, ${melt.charge}`}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
