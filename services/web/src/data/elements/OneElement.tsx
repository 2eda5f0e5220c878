import { useQuery } from '@tanstack/react-query';
import type { OwnColumnView } from '@tiegel/contract';
import {
  type ColumnId,
  columns,
  elementOf,
  generalCaution,
  hazardSources,
  nearestSymbols,
} from '@tiegel/elements';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import { elementsQuery, pricesQuery } from '../../server/queries.ts';
import type { ElementView } from '../../server/types.ts';
import { Notation } from '../../words/Notation.tsx';
import { columnsQuery } from '../dataQueries.ts';
import { SourceText } from './ColumnSources.tsx';
import { ElementPairs } from './ElementPairs.tsx';
import { decimalsIn, decimalsOf } from './elementColumns.tsx';

/** All that is known of one element: values with their sources, price, hazards, its pairs. */
export function OneElement({ symbol }: { symbol: string }) {
  useTitle(elementOf(symbol)?.name ?? symbol);
  const { data, error, refetch } = useQuery(elementsQuery);
  const own = useQuery(columnsQuery);
  if (error && !data)
    return <Failed error={error} what={`The element ${symbol}`} onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Fetching the elements" />;
  const at = data.findIndex((one) => one.symbol === symbol);
  const element = data[at];
  if (!element) return <NoElement symbol={symbol} />;
  return (
    <article className="column one-element">
      <div className="row">
        <h2>
          {element.name} <span className="quiet plain">{symbol}</span>
        </h2>
        <Neighbour element={data[at - 1]} words="←" name="Before it" />
        <Neighbour element={data[at + 1]} words="→" name="After it" />
        <Link href="/data/elements">All elements</Link>
      </div>
      <p className="read">
        Number {element.atomicNumber}, {element.family}, period {element.period}
        {element.group === null ? '' : `, group ${element.group}`}.{' '}
        <Link href={`/data/alloys?has=${symbol}`}>Published alloys with {symbol}</Link>
      </p>
      <Values element={element} own={own.data ?? []} />
      <PriceLine element={element} />
      <ElementHazards element={element} />
      <ElementPairs symbol={symbol} />
    </article>
  );
}

function Neighbour({
  element,
  words,
  name,
}: {
  element: ElementView | undefined;
  words: string;
  name: string;
}) {
  if (!element) return null;
  return (
    <Link href={`/data/elements/${element.symbol}`} title={`${name}: ${element.name}`}>
      {words === '←' ? '← ' : ''}
      {element.symbol}
      {words === '→' ? ' →' : ''}
    </Link>
  );
}

function NoElement({ symbol }: { symbol: string }) {
  const without = elementOf(symbol);
  const near = nearestSymbols(symbol);
  return (
    <p className="note note-warning" role="alert">
      {without
        ? `There are no data of ${without.name.toLowerCase()} (${symbol}) here.`
        : `No element has the symbol “${symbol}”.`}{' '}
      {without || near.length === 0 ? '' : `Did you mean ${near.join(' or ')}? `}
      <Link href="/data/elements">All elements with data</Link>
    </p>
  );
}

function Values({ element, own }: { element: ElementView; own: readonly OwnColumnView[] }) {
  const cited = [...new Set(columns.map(({ id }) => element.sources[id]))];
  return (
    <section className="column" aria-labelledby="values-head">
      <h3 id="values-head">Values</h3>
      <table className="plain-table one-element-values">
        <thead>
          <tr>
            <th scope="col">Value of</th>
            <th scope="col" className="number">
              Value
            </th>
            <th scope="col">Unit</th>
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {columns.map(({ id, name, symbol, unit, meaning }) => (
            <tr key={id}>
              <th scope="row" className="plain">
                {name}
                {symbol === '' ? null : (
                  <>
                    {'\u00a0'}
                    <Notation text={symbol} />
                  </>
                )}
                <span className="small quiet data-meaning">{meaning}</span>
              </th>
              <td className="number">{valueInWords(element, id)}</td>
              <td>{unitText(unit, null)}</td>
              <td>
                <a href={`#source-${element.sources[id]}`}>[{cited.indexOf(element.sources[id]) + 1}]</a>
              </td>
            </tr>
          ))}
          {own.map((column) => (
            <tr key={column.id}>
              <th scope="row" className="plain">
                {column.name}
              </th>
              <td className="number">
                {formatNumber(column.values[element.symbol], decimalsIn(Object.values(column.values)))}
              </td>
              <td>{unitText(column.unit, null)}</td>
              <td>
                <Link href="/data/imports?kind=column">yours</Link>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <h3 id="sources-head">Sources</h3>
      <ol className="data-footnotes small" aria-labelledby="sources-head">
        {cited.map((code, at) => (
          <li key={code} id={`source-${code}`}>
            [{at + 1}] <SourceText code={code} />
          </li>
        ))}
      </ol>
    </section>
  );
}

/** A value with as many decimals as the data have; those of Miedema's model are computed and rounded. */
function valueInWords(element: ElementView, id: ColumnId): string {
  const value = element[id];
  if (typeof value === 'string') return value;
  const decimals = id.startsWith('miedema') || value === null ? decimalsOf(id) : decimalsIn([value]);
  return formatNumber(value, decimals);
}

function PriceLine({ element }: { element: ElementView }) {
  const { data: prices } = useQuery(pricesQuery);
  const price = prices?.prices[element.symbol];
  return (
    <section className="column" aria-labelledby="price-head">
      <h3 id="price-head">Price</h3>
      {price && prices ? (
        <p className="read">
          {formatNumber(price.pricePerKilogram, 2)} {prices.currency}/kg, {price.date}, {price.source}.{' '}
          {prices.invented && !price.source.includes('invented')
            ? 'The list is invented for the demonstration. '
            : ''}
          <Link href="/data/prices">The list in force</Link>
        </p>
      ) : (
        <p className="read">
          The list in force has no price of it.{' '}
          <Link href="/data/imports/new?kind=prices">Bring in prices</Link>
        </p>
      )}
    </section>
  );
}

function ElementHazards({ element: { hazards } }: { element: ElementView }) {
  const used = [...new Set(hazards.map(({ source }) => source))];
  return (
    <section className="column" aria-labelledby="hazards-head">
      <h3 id="hazards-head">Hazards in handling</h3>
      {hazards.length === 0 ? (
        <p className="read">None is on record here; that does not say that there is none.</p>
      ) : (
        <ul className="data-hazards">
          {hazards.map(({ kind, text, source }) => (
            <li key={kind + text}>
              <b>
                <span aria-hidden="true">⚠ </span>
                {kind}
              </b>
              : {text} <span className="quiet small">({source})</span>
            </li>
          ))}
        </ul>
      )}
      {used.length > 0 ? (
        <p className="small quiet read-small">
          {used.map((source) => `${source}: ${hazardSources[source]}.`).join(' ')}
        </p>
      ) : null}
      <p className="note note-warning">{generalCaution}</p>
    </section>
  );
}
