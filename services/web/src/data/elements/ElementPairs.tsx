import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { Waiting } from '../../frame/Waiting.tsx';
import { pairsQuery } from '../../server/queries.ts';
import { enthalpyText } from '../pairs/enthalpyText.ts';
import { partnersOf } from '../pairs/partnersOf.ts';

/** Partners at each end that are named. */
const named = 8;

/** The partners that an element attracts most and least, by the enthalpy of mixing of the pair. */
export function ElementPairs({ symbol }: { symbol: string }) {
  const { data, error, refetch } = useQuery(pairsQuery);
  if (error && !data)
    return <Failed error={error} what="The pair enthalpies" onRetry={() => void refetch()} />;
  if (!data) return <Waiting what="Fetching the pairs" />;
  const partners = partnersOf(data, symbol);
  const list = (some: typeof partners) => (
    <ul className="data-partners">
      {some.map(({ partner, mixingEnthalpy }) => (
        <li key={partner}>
          <Link href={`/data/elements/${partner}`}>{partner}</Link> {enthalpyText(mixingEnthalpy)}
        </li>
      ))}
    </ul>
  );
  return (
    <section className="column" aria-labelledby="pairs-head">
      <h3 id="pairs-head">Pairs</h3>
      <p className="read-small">
        Enthalpy of mixing of the equimolar binary, kJ/mol; below zero unlike atoms attract each other.
      </p>
      <h4>Most attracted</h4>
      {list(partners.slice(0, named))}
      <h4>Least attracted</h4>
      {list(partners.slice(-named).reverse())}
      <p>
        <Link href={`/data/pairs?show=list&element=${symbol}`}>
          All {partners.length} pairs of {symbol}
        </Link>
      </p>
    </section>
  );
}
