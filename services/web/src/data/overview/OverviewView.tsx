import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useTitle } from '../../frame/useTitle.ts';
import { formatCount } from '../../numbers/formatNumber.ts';
import { elementsQuery, pairsQuery, pricesQuery } from '../../server/queries.ts';
import { columnsQuery } from '../dataQueries.ts';
import { countOf } from './countOf.ts';

/** What there is in each part of the data, and what of it is somebody's own. */
export function OverviewView() {
  useTitle('Data');
  const elements = useQuery(elementsQuery);
  const columns = useQuery(columnsQuery);
  const pairs = useQuery(pairsQuery);
  const prices = useQuery(pricesQuery);
  return (
    <section className="column" aria-label="Overview">
      <p className="read">
        Every number of this program comes from these tables: what they hold, and from where. Missing values
        stay missing; nothing is guessed.
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
      </dl>
    </section>
  );
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
