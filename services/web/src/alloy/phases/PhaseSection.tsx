import { phaseClasses } from '@tiegel/contract/terms';
import { Link } from 'wouter';
import { formatNumber, formatPercent } from '../../numbers/formatNumber.ts';
import { Dimmed } from '../Dimmed.tsx';
import type { AlloyState } from '../state/alloyState.ts';
import { apartInWords, farthestPercent } from '../verdict/apartInWords.ts';
import { classWords } from '../verdict/knownInWords.ts';
import { NearestTable } from './NearestTable.tsx';
import { OwnPhase } from './OwnPhase.tsx';
import './phases.css';
import { Prose } from '../../words/Prose.tsx';

/** The estimate of the phases: four classes, the likely set, its reliability and its basis; and what is published nearby. */
export function PhaseSection({ alloy }: { alloy: AlloyState }) {
  const { explanation, evidence } = alloy;
  if (!explanation) return null;
  const { phase, nearest } = explanation;
  const record = evidence?.phaseEstimate;
  return (
    <section aria-labelledby="phases" className="phases">
      <h2 id="phases">Phases</h2>
      <Dimmed alloy={alloy}>
        <div className="phases-sides">
          <div className="column">
            <h3>Estimate, as usually made</h3>
            {phase.basis === 'none' ? (
              <p className="note">{phase.words}</p>
            ) : (
              <ul className="class-bars">
                {phaseClasses.map((name) => (
                  <li key={name}>
                    <span>
                      {phase.likely?.includes(name) ? <b>✓ {classWords[name]}</b> : classWords[name]}
                    </span>
                    <span className="class-bar" aria-hidden="true">
                      <span style={{ inlineSize: `${100 * (phase[name] ?? 0)}%` }} />
                    </span>
                    <span className="number">{formatNumber(100 * (phase[name] ?? 0), 0)} %</span>
                  </li>
                ))}
              </ul>
            )}
            <OwnPhase own={explanation.own} published={phase.singleSolution} />
            {phase.likely ? (
              <p className="read-small">
                Ticked (✓): the classes that together hold what is reported of 80 of 100 alloys. Several ticks
                are the honest answer where the data cannot decide.
              </p>
            ) : null}
            <p className="read-small">
              Basis: {phase.basis === 'ok' ? 'near enough' : phase.basis === 'weak' ? 'thin' : 'none'}.{' '}
              {apartInWords(phase.nearestDistance)} of the atoms differ from the nearest alloy that the
              estimate learnt from; beyond {farthestPercent} % too few are known to say what it is worth.
            </p>
          </div>
          {record ? (
            <div className="column">
              <h3>How far to trust it</h3>
              <p className="read-small">
                <Prose text={phase.trust} />
              </p>
              <dl className="record-list">
                <div>
                  <dt>Tells one phase from more (AUC; a coin: {formatNumber(0.5, 2)})</dt>
                  <dd>
                    {formatNumber(record.auc, 2)} ({formatNumber(record.intervals.auc[0], 2)} to{' '}
                    {formatNumber(record.intervals.auc[1], 2)})
                  </dd>
                </div>
                <div>
                  <dt>Balanced accuracy, beside the best rule</dt>
                  <dd>
                    {formatNumber(record.balancedAccuracy, 2)}
                    {record.bestRule
                      ? `, ${formatNumber(record.bestRule.balancedAccuracy, 2)} (${record.bestRule.name})`
                      : ''}
                  </dd>
                </div>
                <div>
                  <dt>One phase among the published</dt>
                  <dd>{formatPercent(record.baseRate, 1)}</dd>
                </div>
              </dl>
              <p className="screen-only">
                <Link href="/evidence">Its whole record</Link>
              </p>
            </div>
          ) : null}
        </div>
        <NearestTable nearest={nearest} />
      </Dimmed>
    </section>
  );
}
