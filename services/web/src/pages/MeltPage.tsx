import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { formatComposition } from '@tiegel/elements';
import { Link, useLocation, useParams, useSearchParams } from 'wouter';
import '../charge/charge.css';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { Failed } from '../frame/Failed.tsx';
import { FaultList } from '../frame/FaultList.tsx';
import { Printed } from '../frame/Printed.tsx';
import { useTitle } from '../frame/useTitle.ts';
import { Waiting } from '../frame/Waiting.tsx';
import { AsWeighed } from '../melt/AsWeighed.tsx';
import { Attachments } from '../melt/Attachments.tsx';
import { ChangeMelt } from '../melt/ChangeMelt.tsx';
import { useRememberDeleted } from '../melt/Deleted.tsx';
import { Doubts } from '../melt/Doubts.tsx';
import { History } from '../melt/History.tsx';
import { MeltFacts } from '../melt/MeltFacts.tsx';
import '../melt/melt.css';
import { meltQuery } from '../melt/meltQueries.ts';
import { refreshMelts } from '../melt/refreshMelts.ts';
import { formatInstant } from '../numbers/formatInstant.ts';
import { request } from '../server/request.ts';

/** A melt: what was weighed, how it was melted, what was seen; to be changed, and deleted with a way back. */
export function MeltPage() {
  const { id = '' } = useParams<{ id: string }>();
  const { data: melt, error, refetch } = useQuery(meltQuery(id));
  const [address, setAddress] = useSearchParams();
  const setChanging = (changing: boolean) => setAddress(changing ? { change: 'yes' } : {});
  const [, navigate] = useLocation();
  const client = useQueryClient();
  const remember = useRememberDeleted();
  const name = melt ? melt.name || `Melt of ${melt.date}` : 'Melt';
  useTitle(name);
  const deleting = useMutation({
    mutationFn: () => request(`/melts/${encodeURIComponent(id)}`, { method: 'DELETE' }),
    onSuccess: async () => {
      remember({ id, name });
      await refreshMelts(client);
      navigate('/melts');
    },
  });
  if (error && !melt)
    return (
      <Failed
        error={error}
        what="The melt"
        onRetry={() => void refetch()}
        list={{ to: '/melts', name: 'all melts' }}
      />
    );
  if (!melt) return <Waiting what="Fetching the melt" />;
  if (address.get('change') === 'yes') return <ChangeMelt melt={melt} onEnd={() => setChanging(false)} />;
  return (
    <article className="melt-page">
      <header className="column">
        <p className="screen-only">
          <Link href="/melts">Melts</Link>
        </p>
        <h1>
          {name} <span className="quiet plain">{melt.date}</span>
        </h1>
        {melt.deletedAt ? (
          <p className="note note-warning">This melt was deleted {formatInstant(melt.deletedAt)}.</p>
        ) : null}
        <p>
          <Shares composition={melt.composition} decimals={2} />{' '}
          <span className="quiet">at.%, as weighed</span>
        </p>
        <ShareBar composition={melt.composition} labelled />
        <p className="row screen-only">
          <button type="button" onClick={() => setChanging(true)}>
            Change
          </button>
          <button type="button" onClick={() => deleting.mutate()}>
            Delete
          </button>
          <Link href={`/alloys/${formatComposition(melt.composition)}`} className="button">
            The alloy as weighed
          </Link>
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
        </p>
        <FaultList error={deleting.error} what="The melt was not deleted." />
      </header>
      <div className="melt-sides">
        <MeltFacts melt={melt} />
        <AsWeighed composition={melt.composition} nominal={melt.nominal} />
      </div>
      <Doubts doubts={melt.doubts} />
      <Attachments melt={melt} />
      <History history={melt.history} />
      <footer className="small quiet">
        <Printed />
      </footer>
    </article>
  );
}
