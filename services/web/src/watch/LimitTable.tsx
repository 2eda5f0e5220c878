import type { QuantityView, SearchView } from '@tiegel/contract';
import { formatCount, formatPercent } from '../numbers/formatNumber.ts';
import { lookupIn } from '../server/lookup.ts';
import { limitAsSentence } from '../words/limitAsSentence.ts';

/** How much of the whole each limit leaves by itself, and all of them together. */
export function LimitTable({
  search,
  quantities,
}: {
  search: SearchView;
  quantities: readonly QuantityView[];
}) {
  const { counts, specification, prices, moreQuantities } = search;
  const { points, passed, passedEach, outside } = counts;
  const lookup = lookupIn([...quantities, ...moreQuantities], prices?.currency);
  const leastPassed = Math.min(...(passedEach ?? []));
  return (
    <table className="plain-table limit-table">
      <caption>
        Which limit leaves how much of {formatCount(points)} compositions
        {search.state === 'done' ? '' : ' tested so far'}
      </caption>
      <thead>
        <tr>
          <th scope="col">Limit</th>
          <th scope="col" className="number">
            Leaves
          </th>
          <th scope="col" className="number">
            Share
          </th>
          <th scope="col" className="limit-bar-head">
            <span className="unseen">Share as a bar</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {specification.limits.map((limit, index) => {
          const words = limitAsSentence(limit, lookup);
          const left = passedEach?.[index] ?? null;
          const without = outside?.[limit.quantity] ?? 0;
          return (
            <tr key={words}>
              <th scope="row">
                {words}
                {left === leastPassed && specification.limits.length > 1 ? (
                  <span className="tag"> leaves least</span>
                ) : null}
                {without > 0 ? (
                  <span className="small quiet limit-outside">
                    {formatCount(without)} have no value of it and fail it
                  </span>
                ) : null}
              </th>
              <ShareCells part={left} whole={points} />
            </tr>
          );
        })}
        <tr className="limit-all">
          <th scope="row">All together</th>
          <ShareCells part={passed} whole={points} />
        </tr>
      </tbody>
    </table>
  );
}

function ShareCells({ part, whole }: { part: number | null; whole: number }) {
  if (part === null) {
    return (
      <td className="quiet" colSpan={3}>
        not counted
      </td>
    );
  }
  return (
    <>
      <td className="number">{formatCount(part)}</td>
      <td className="number">{formatPercent(part, whole)}</td>
      <td className="limit-bar">
        <span className="limit-track">
          <span
            style={{ inlineSize: whole === 0 ? 0 : `max(${part > 0 ? 1 : 0}px, ${(100 * part) / whole}%)` }}
          />
        </span>
      </td>
    </>
  );
}
