import type { Candidate, SearchView } from '@tiegel/contract';
import { atomicToWeightPercent, elementOf } from '@tiegel/elements';
import { toneOf } from '../composition/ShareBar.tsx';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { formatNumber } from '../numbers/formatNumber.ts';

/** The shares by atoms and by mass. */
export function ShareTable({ search, candidate }: { search: SearchView; candidate: Candidate }) {
  const { composition } = candidate;
  const weights = atomicToWeightPercent(composition);
  const decimals = shareDecimals(search.specification.fractions);
  return (
    <section aria-labelledby="shares-head">
      <h2 id="shares-head">Composition</h2>
      <table className="plain-table">
        <thead>
          <tr>
            <th scope="col">Element</th>
            <th scope="col" className="number">
              at.%
            </th>
            <th scope="col" className="number">
              wt.%
            </th>
          </tr>
        </thead>
        <tbody>
          {Object.keys(composition)
            .sort()
            .map((symbol) => (
              <tr key={symbol}>
                <th scope="row">
                  <span
                    className="swatch"
                    aria-hidden="true"
                    style={{ ['--tone' as string]: toneOf(symbol) }}
                  />
                  {symbol} <span className="quiet plain">{elementOf(symbol)?.name.toLowerCase()}</span>
                </th>
                <td className="number">{formatNumber(composition[symbol], decimals)}</td>
                <td className="number">{formatNumber(weights[symbol], 2)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </section>
  );
}
