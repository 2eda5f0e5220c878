import type { Evidence } from '@tiegel/contract';
import { WideContent } from '../frame/WideContent.tsx';
import { formatCount, formatNumber } from '../numbers/formatNumber.ts';
import { tied } from '../words/tied.ts';

/** Computed yield strengths beside measured ones of published alloys of one phase. */
export function StrengthRecord({ comparisons }: { comparisons: Evidence['strength'] }) {
  return (
    <section aria-labelledby="strengths">
      <h2 id="strengths">Strengths, computed and measured</h2>
      <p className="read-small">
        Published yield strengths of alloys that were reported as one phase, beside the computed ones. The
        error is the median of how far they lie apart.
      </p>
      <WideContent labelledBy="strengths">
        <table className="plain-table cards">
          <thead>
            <tr>
              <th scope="col">Alloys</th>
              <th scope="col">Tested at (K)</th>
              <th scope="col" className="number">
                Compared
              </th>
              <th scope="col" className="number">
                Median error
              </th>
              <th scope="col" className="number">
                Within a factor of {formatNumber(1.5, 1)}
              </th>
              <th scope="col" className="number">
                Computed over measured, middle
              </th>
              <th scope="col" className="number">
                Farthest
              </th>
              <th scope="col" className="number">
                Rank correlation
              </th>
            </tr>
          </thead>
          <tbody>
            {comparisons.map((one) => (
              <tr key={one.id}>
                <th scope="row" className="plain">
                  {tied(one.what)}
                </th>
                <td data-label="Tested at (K)">
                  {`${formatNumber(one.from, 0)}\u00a0to\u00a0${formatNumber(one.to, 0)}`}
                </td>
                <td className="number" data-label="Compared">
                  {formatCount(one.n)}
                </td>
                <td className="number" data-label="Median error">
                  <b>{tied(`${formatNumber(100 * one.medianError, 0)} %`)}</b>
                </td>
                <td className="number" data-label={`Within a factor of ${formatNumber(1.5, 1)}`}>
                  {tied(`${formatNumber(100 * one.withinFactor, 0)} %`)}
                </td>
                <td className="number" data-label="Computed over measured, middle">
                  {formatNumber(one.medianRatio, 2)}
                </td>
                <td className="number" data-label="Farthest">
                  {formatNumber(one.farthestRatio, 2)}
                </td>
                <td className="number" data-label="Rank correlation">
                  {formatNumber(one.rankCorrelation, 2)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideContent>
    </section>
  );
}
