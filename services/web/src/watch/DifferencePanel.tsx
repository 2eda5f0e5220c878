import { useQuery } from '@tanstack/react-query';
import type { SearchView } from '@tiegel/contract';
import { differencesOf } from '@tiegel/contract/terms';
import { conditions } from '@tiegel/screening';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import { Failed } from '../frame/Failed.tsx';
import { formatInstant } from '../numbers/formatInstant.ts';
import { inLocale } from '../numbers/inLocale.ts';
import { quantitiesQuery, searchesQuery } from '../server/queries.ts';

/** What changed from another search to this one, by default from the one before it. */
export function DifferencePanel({ search }: { search: SearchView }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="small" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>What changed since another search</summary>
      {open ? <Comparison search={search} /> : null}
    </details>
  );
}

function Comparison({ search }: { search: SearchView }) {
  const { data, error, refetch } = useQuery(searchesQuery);
  const { data: quantities } = useQuery(quantitiesQuery);
  const [chosen, setChosen] = useState<string | null>(null);
  const id = useId();
  const others = (data ?? []).filter((one) => one.id !== search.id);
  const earlier = others.find(({ createdAt }) => createdAt < search.createdAt) ?? others[0];
  const other = others.find((one) => one.id === chosen) ?? earlier;
  if (error && !data)
    return <Failed error={error} what="The other searches" onRetry={() => void refetch()} />;
  if (!data) return <p role="status">Fetching the searches …</p>;
  if (other === undefined) return <p>There is no other search.</p>;
  const found = differencesOf(other, search, { quantities: quantities ?? [], conditions, inLocale });
  const otherData = other.dataVersion !== search.dataVersion;
  return (
    <>
      <p className="row">
        <label htmlFor={id}>Since</label>
        <select id={id} value={other.id} onChange={(event) => setChosen(event.target.value)}>
          {others.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name === '' ? 'Without a name' : one.name}, {formatInstant(one.createdAt)}
            </option>
          ))}
        </select>
      </p>
      {found.length === 0 ? (
        <p>Nothing: both ask the same of the same data.</p>
      ) : (
        <table className="plain-table">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">There</th>
              <th scope="col">Here</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ what, before, after }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{before ?? '–'}</td>
                <td>{after ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {otherData ? (
        <p>
          What each <Link href="/data/versions">version of the data</Link> holds of your own stands there.
        </p>
      ) : null}
    </>
  );
}
