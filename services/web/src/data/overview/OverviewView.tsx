import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useTitle } from '../../frame/useTitle.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { elementsQuery, pairsQuery, pricesQuery } from '../../server/queries.ts';
import {
  alloyCountQuery,
  columnsQuery,
  dataVersionsQuery,
  importsQuery,
  materialsQuery,
} from '../dataQueries.ts';
import { countOf } from './countOf.ts';

/** What there is in each part of the data, and what of it is somebody's own. */
export function OverviewView() {
  useTitle('Data');
  const elements = useQuery(elementsQuery);
  const columns = useQuery(columnsQuery);
  const pairs = useQuery(pairsQuery);
  const prices = useQuery(pricesQuery);
  const published = useQuery(alloyCountQuery('no'));
  const ownAlloys = useQuery(alloyCountQuery('yes'));
  const materials = useQuery(materialsQuery);
  const imports = useQuery(importsQuery);
  const versions = useQuery(dataVersionsQuery);
  return (
    <section className="column" aria-label="Overview">
      <p className="read">
        Every number of this program comes from these tables: what they hold, from where, and what you brought
        in yourself. Missing values stay missing; nothing is guessed.
      </p>
      <dl className="data-overview">
        <Part name="Elements" to="/data/elements" query={elements}>
          {(list) =>
            `${formatCount(list.length)} with values, sources and hazards${columns.data?.length ? `; ${countOf(columns.data.length, 'column')} of your own` : ''}`
          }
        </Part>
        <Part name="Pairs" to="/data/pairs" query={pairs}>
          {(list) => `${formatCount(list.length)} enthalpies of mixing`}
        </Part>
        <Part name="Prices" to="/data/prices" query={prices}>
          {(list) =>
            list === null
              ? 'no list is in force'
              : `${formatCount(Object.keys(list.prices).length)} prices in ${list.currency} per kg, ${list.invented ? 'invented for the demonstration' : `your list, newest entry ${list.date}`}`
          }
        </Part>
        <Part name="Published alloys" to="/data/alloys" query={published}>
          {(count) =>
            `${formatCount(count)} with phases and publications${ownAlloys.data ? `; ${formatCount(ownAlloys.data)} of your own` : ''}`
          }
        </Part>
        <Part name="Raw materials" to="/data/materials" query={materials}>
          {(list) => materialsInWords(list.filter(({ own }) => own).length)}
        </Part>
        <Part name="Your own" to="/data/imports" query={imports}>
          {(list) =>
            list.length === 0
              ? 'nothing brought in yet'
              : `${countOf(list.length, 'import')}, ${formatCount(list.filter(({ inForce }) => inForce).length)} in force`
          }
        </Part>
        <Part name="Versions" to="/data/versions" query={versions}>
          {({ current, items }) => (
            <>
              <code>{current}</code> in force;{' '}
              {countOf(
                items.reduce((sum, { searches }) => sum + searches.length, 0),
                'search',
                'searches',
              )}{' '}
              used {countOf(items.filter(({ searches }) => searches.length > 0).length, 'version')}
            </>
          )}
        </Part>
      </dl>
      <p>
        <Link href="/data/imports/new" className="button">
          Bring in your own data
        </Link>
      </p>
    </section>
  );
}

function materialsInWords(own: number): string {
  return own === 0
    ? 'every element pure; none of your own'
    : `${formatCount(own)} of your own, and every element pure`;
}

interface PartProps<Data> {
  name: string;
  to: string;
  query: UseQueryResult<Data>;
  children: (data: Data) => ReactNode;
}

/** One part: its name as a link, and what it holds once that is known. */
function Part<Data>({ name, to, query: { data, error }, children }: PartProps<Data>) {
  return (
    <div>
      <dt>
        <Link href={to}>{name}</Link>
      </dt>
      <dd>
        {data !== undefined ? (
          children(data)
        ) : error ? (
          <span className="quiet">cannot be counted: {error.message}</span>
        ) : (
          <span className="quiet waiting">counting …</span>
        )}
      </dd>
    </div>
  );
}
