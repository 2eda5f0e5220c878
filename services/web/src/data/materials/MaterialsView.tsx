import { useQuery } from '@tanstack/react-query';
import type { MaterialView } from '@tiegel/contract';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { elementsQuery, pricesQuery } from '../../server/queries.ts';
import { materialsQuery } from '../dataQueries.ts';
import { ImportsInForce } from '../imports/ImportsInForce.tsx';
import { SearchField } from '../SearchField.tsx';
import { useAddress } from '../useAddress.ts';
import { containsInWords } from './containsInWords.ts';

/** Raw materials that charge sheets can be weighed from. */
export function MaterialsView() {
  useTitle('Raw materials');
  const [address, change] = useAddress();
  const { data, error, refetch } = useQuery(materialsQuery);
  const { data: prices } = useQuery(pricesQuery);
  const text = address.get('text') ?? '';
  const shown = (data ?? []).filter((material) =>
    `${material.name} ${containsInWords(material)}`.toLowerCase().includes(text.trim().toLowerCase()),
  );
  return (
    <section className="column" aria-labelledby="materials-head">
      <h2 id="materials-head">Raw materials</h2>
      <p className="read">
        What a charge is weighed from: elements as they are sold, and master alloys. A{' '}
        <Link href="/charge">charge sheet</Link> chooses among them.
      </p>
      <ImportsInForce kind="materials" />
      {error && !data ? (
        <Failed error={error} what="The raw materials" onRetry={() => void refetch()} />
      ) : null}
      {!data && !error ? <Waiting what="Fetching the materials" /> : null}
      {prices?.invented ? (
        <p className="note note-warning">
          The prices of the pure elements are <b>invented</b> for the demonstration.
        </p>
      ) : null}
      {data && data.length > 0 ? (
        <div className="row data-tools">
          <SearchField
            label="Search"
            value={text}
            placeholder="name or element"
            onChange={(next) => change({ text: next })}
          />
          <span className="quiet" role="status">
            {shown.length} of {data.length} materials.
          </span>
        </div>
      ) : null}
      {data?.every(({ own }) => !own) ? (
        <p className="read">
          None of your own is stored here yet: every element counts as pure, at the price of the list in
          force. <Link href="/data/imports/new?kind=materials">Bring in materials</Link> to have purity, price
          and master alloys at hand for every charge.
        </p>
      ) : null}
      {data && data.length > 0 && shown.length === 0 ? (
        <p className="note row" role="status">
          No material fits “{text}”.
          <button type="button" onClick={() => change({ text: null })}>
            Show all materials
          </button>
        </p>
      ) : null}
      {shown.length > 0 ? <MaterialTable materials={shown} /> : null}
    </section>
  );
}

function MaterialTable({ materials }: { materials: readonly MaterialView[] }) {
  const { data: elements } = useQuery(elementsQuery);
  // An element as it is sold melts where the element does.
  const melting = new Map(
    (elements ?? []).map((one) => [one.symbol, Number(one.meltingTemperature) || null]),
  );
  const meltingOf = ({ name, own, meltingTemperature }: MaterialView) =>
    meltingTemperature ?? (own ? null : melting.get(name));
  return (
    <table className="plain-table cards data-materials">
      <caption className="unseen">Raw materials</caption>
      <thead>
        <tr>
          <th scope="col">Material</th>
          <th scope="col">
            Contains<span className="head-unit">wt.% of its metal</span>
          </th>
          <th scope="col" className="number">
            Purity<span className="head-unit">wt.%</span>
          </th>
          <th scope="col" className="number">
            Price<span className="head-unit">per kg</span>
          </th>
          <th scope="col" className="number">
            Melts at<span className="head-unit">K</span>
          </th>
          <th scope="col">From</th>
        </tr>
      </thead>
      <tbody>
        {materials.map((material) => (
          <tr key={material.name}>
            <th scope="row">{material.name}</th>
            <td data-label="Contains, wt.%">{containsInWords(material)}</td>
            <td className="number" data-label="Purity, wt.%">
              {formatNumber(material.purity, material.purity === 100 ? 0 : 2)}
            </td>
            <td className="number" data-label="Price per kg">
              {formatNumber(material.price, 2)} {material.price === null ? '' : material.currency}
            </td>
            <td className="number" data-label="Melts at, K">
              {formatNumber(meltingOf(material), 0)}
            </td>
            <td data-label="From" className="cards-wide">
              {material.import == null ? (
                'element, price of the list in force'
              ) : (
                <Link href={`/data/imports/${material.import}`}>your import {material.import}</Link>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
