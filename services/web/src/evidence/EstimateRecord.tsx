import type { Evidence } from '@tiegel/contract';
import { formatCount, formatNumber, formatPercent, noValue } from '../numbers/formatNumber.ts';
import { ReliabilityFigure } from './ReliabilityFigure.tsx';

/** How the phase estimate did on systems that it had not seen, beside the base rate and the best rule. */
export function EstimateRecord({ record }: { record: Evidence['phaseEstimate'] }) {
  const { bestRule, intervals } = record;
  const range = ([low, high]: readonly [number, number]) =>
    `${formatNumber(low, 2)} to ${formatNumber(high, 2)}`;
  return (
    <section aria-labelledby="estimate">
      <h2 id="estimate">The phase estimate</h2>
      <p className="read-small">{record.trust}</p>
      <p className="read-small quiet">{record.validation}</p>
      <div className="evidence-sides">
        <ReliabilityFigure record={record} />
        <div className="column">
          <table className="plain-table scores">
            <caption className="unseen">Scores of one solution or not</caption>
            <thead>
              <tr>
                <th scope="col">One solution or not</th>
                <th scope="col" className="number">
                  Estimate
                </th>
                <th scope="col" className="number">
                  Base rate alone
                </th>
              </tr>
            </thead>
            <tbody>
              <Score
                name="AUC: tells one from more"
                value={record.auc}
                note={range(intervals.auc)}
                base={0.5}
              />
              <Score
                name="Balanced accuracy"
                value={record.balancedAccuracy}
                note={range(intervals.balancedAccuracy)}
                base={0.5}
              />
              <Score name="Log loss (lower is better)" value={record.logLoss} base={record.baseRateLogLoss} />
              <Score name="Brier score (lower is better)" value={record.brier} base={record.baseRateBrier} />
              <Score
                name="Brier skill"
                value={record.brierSkill}
                note={range(intervals.brierSkill)}
                base={0}
              />
              <Score name="Calibration error" value={record.calibrationError} base={null} />
              <Score name="Four classes right" value={record.fourClassAccuracy} base={null} />
              <Score name="fcc or bcc, among one phase" value={record.fccAgainstBcc} base={null} />
              <Score
                name="Set of likely classes holds the reported one"
                value={record.conformalCoverage}
                base={null}
              />
            </tbody>
          </table>
          <p className="read-small">
            {formatPercent(record.baseRate, 1)} of the alloys are one solution: always saying that is the base
            rate.
            {bestRule
              ? ` The best published rule is ${bestRule.name}, balanced accuracy ${formatNumber(bestRule.balancedAccuracy, 2)} (${range(bestRule.interval)}).`
              : ''}{' '}
            The AUC moves by {formatNumber(record.aucSpread, 3)} from one draw of the folds to the next.
          </p>
          <table className="plain-table">
            <caption className="small quiet evidence-caption">
              By distance to the nearest alloy of another system
            </caption>
            <thead>
              <tr>
                <th scope="col">Atoms that differ</th>
                <th scope="col" className="number">
                  Alloys
                </th>
                <th scope="col" className="number">
                  AUC
                </th>
                <th scope="col" className="number">
                  Brier skill
                </th>
              </tr>
            </thead>
            <tbody>
              {record.byDistance.map(({ from, to, alloys, auc, brierSkill }) => (
                <tr key={from}>
                  <th scope="row" className="plain">
                    {to >= 1
                      ? `more than ${formatNumber(100 * from, 0)} %: no answer is given`
                      : `${formatNumber(100 * from, 0)} to ${formatNumber(100 * to, 0)} %`}
                  </th>
                  <td className="number">{formatCount(alloys)}</td>
                  <td className="number">{auc === null ? noValue : formatNumber(auc, 2)}</td>
                  <td className="number">{brierSkill === null ? noValue : formatNumber(brierSkill, 2)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
    </section>
  );
}

interface ScoreProps {
  name: string;
  value: number;
  note?: string;
  base: number | null;
}

function Score({ name, value, note, base }: ScoreProps) {
  return (
    <tr>
      <th scope="row" className="plain">
        {name}
      </th>
      <td className="number">
        <b>{formatNumber(value, 2)}</b> {note ? <span className="quiet small">({note})</span> : null}
      </td>
      <td className="number">{base === null ? '' : formatNumber(base, 2)}</td>
    </tr>
  );
}
