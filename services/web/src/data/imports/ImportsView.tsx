import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { importsQuery } from '../dataQueries.ts';
import { useAddress } from '../useAddress.ts';
import { ImportLine } from './ImportLine.tsx';
import { importKinds } from './importKinds.ts';

/** Everything that somebody brought in, the newest first. */
export function ImportsView() {
  useTitle('Your own data');
  const [address, change] = useAddress();
  const { data, error, refetch } = useQuery(importsQuery);
  const only = importKinds.find(({ id }) => id === address.get('kind'))?.id ?? '';
  const shown = data?.filter(({ kind }) => only === '' || kind === only) ?? [];
  return (
    <section className="column" aria-labelledby="imports-head">
      <div className="row">
        <h2 id="imports-head">Your own data</h2>
        <Link href={only === '' ? '/data/imports/new' : `/data/imports/new?kind=${only}`} className="button">
          Bring in data
        </Link>
        {data && data.length > 0 ? (
          <label className="row">
            Show
            <select value={only} onChange={(event) => change({ kind: event.target.value })}>
              <option value="">all kinds</option>
              {importKinds.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        ) : null}
      </div>
      {error && !data ? (
        <Failed error={error} what="The list of imports" onRetry={() => void refetch()} />
      ) : null}
      {!data && !error ? <Waiting what="Fetching what was brought in" /> : null}
      {data?.length === 0 ? (
        <p className="read">
          Nothing of your own is stored here yet. Prices, columns of element values, enthalpies of pairs, raw
          materials and alloys can be brought in as CSV; what becomes of each row is shown before anything is
          stored, and every import can be withdrawn again.
        </p>
      ) : null}
      {data && data.length > 0 && shown.length === 0 ? (
        <p className="quiet">Nothing of this kind was brought in.</p>
      ) : null}
      <ul aria-label="Imports">
        {shown.map((version) => (
          <ImportLine key={version.number} version={version} />
        ))}
      </ul>
      {shown.length > 0 ? (
        <p className="small quiet read-small">
          To withdraw takes values out of force, it deletes nothing: searches that ran keep their data, and an
          import can be brought back. What it took the place of holds again until then.
        </p>
      ) : null}
    </section>
  );
}
