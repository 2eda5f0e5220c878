import type { Evidence, OwnEvidence } from '@tiegel/contract';
import { formatCount, formatNumber, formatPercent, noValue } from '../numbers/formatNumber.ts';

/** How the phase estimate did on melts of one's own. */
export function OwnEstimate({ own, recalibration }: Pick<Evidence, 'recalibration'> & { own: OwnEvidence }) {
  const { n, withoutBasis, baseRate, auc, interval, brier, logLoss, fourClassAccuracy } = own.phaseEstimate;
  const range = interval ? ` (${formatNumber(interval[0], 2)} to ${formatNumber(interval[1], 2)})` : '';
  return (
    <section aria-labelledby="own-estimate">
      <h2 id="own-estimate">The phase estimate on your own melts</h2>
      <p className="read-small">{own.trust}</p>
      {n === 0 ? (
        <p className="read-small">
          {formatCount(withoutBasis)} {withoutBasis === 1 ? 'melt lies' : 'melts lie'} too far from every
          published alloy for an estimate.
        </p>
      ) : (
        <table className="plain-table own-estimate">
          <tbody>
            <Line name="Melts with an estimate" value={formatCount(n)} />
            <Line name="Melts without a basis for one" value={formatCount(withoutBasis)} />
            <Line
              name="One solution, of the melts with an estimate"
              value={baseRate === null ? noValue : formatPercent(baseRate, 1)}
            />
            <Line
              name="AUC: tells one from more"
              value={auc === null ? 'not both kinds were melted' : `${formatNumber(auc, 2)}${range}`}
            />
            <Line name="Brier score (lower is better)" value={formatNumber(brier, 2)} />
            <Line name="Log loss (lower is better)" value={formatNumber(logLoss, 2)} />
            <Line name="Four classes right" value={formatNumber(fourClassAccuracy, 2)} />
          </tbody>
        </table>
      )}
      <h3>Recalibrated on them</h3>
      <p className="read-small">{recalibration.words}</p>
    </section>
  );
}

function Line({ name, value }: { name: string; value: string }) {
  return (
    <tr>
      <th scope="row" className="plain">
        {name}
      </th>
      <td className="number">
        <b>{value}</b>
      </td>
    </tr>
  );
}
