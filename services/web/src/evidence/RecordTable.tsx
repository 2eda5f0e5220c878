import { RecordBar } from '../alloy/criteria/RecordBar.tsx';
import '../alloy/criteria/criteria.css';
import type { CriterionRecord } from '@tiegel/contract';
import { sourceInWords } from '../alloy/quantities/sourceInWords.ts';
import { WideContent } from '../frame/WideContent.tsx';
import { formatCount, formatNumber } from '../numbers/formatNumber.ts';
import { Notation } from '../words/Notation.tsx';
import { tied } from '../words/tied.ts';
import type { RecordSource, RuleRecord } from './recordSource.ts';

interface RecordTableProps {
  criteria: readonly CriterionRecord[];
  /** each has its columns, side by side */
  sources: readonly RecordSource[];
}

/** Every rule with how often it was right, on each set of alloys side by side. */
export function RecordTable({ criteria, sources }: RecordTableProps) {
  return (
    <WideContent labelledBy="rules">
      <table className="plain-table criteria-table cards">
        <thead>
          <tr>
            <th scope="col">Rule</th>
            <th scope="col">Predicts</th>
            {sources.map(({ name }) => (
              <RecordHeads key={name} name={name} alone={sources.length === 1} />
            ))}
          </tr>
        </thead>
        <tbody>
          {criteria.map((rule) => (
            <tr key={rule.id}>
              <th scope="row" className="plain">
                <b>{rule.name}</b>
                <span className="criterion-formula">
                  <Notation text={tied(rule.formula)} />
                  {rule.scope ? (
                    <>
                      {' '}
                      (only alloys <Notation text={rule.scope} />)
                    </>
                  ) : null}
                </span>
                <details className="small">
                  <summary>Claim, source and caution</summary>
                  <p>{rule.claim}</p>
                  <p>{sourceInWords(rule.source)}</p>
                  {rule.caution ? <p>{rule.caution}</p> : null}
                </details>
              </th>
              <td data-label="Predicts">{rule.positiveClass}</td>
              {sources.map(({ name, records }) => (
                <RecordCells key={name} record={records[rule.id]} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </WideContent>
  );
}

function RecordHeads({ name, alone }: { name: string; alone: boolean }) {
  return (
    <>
      <th scope="col">{alone ? 'Balanced accuracy' : name}</th>
      <th scope="col" className="number">
        Alloys
      </th>
      <th scope="col">Right and wrong</th>
    </>
  );
}

function RecordCells({ record }: { record: RuleRecord | undefined }) {
  if (!record || record.n === null || record.n === 0) {
    return (
      <td colSpan={3} className="quiet">
        {record?.untested ?? 'not tested'}
      </td>
    );
  }
  const { balancedAccuracy, interval, n, tp, fp, fn, tn } = record;
  return (
    <>
      <td data-label="Balanced accuracy">
        {balancedAccuracy === null ? (
          <span className="quiet">not both kinds</span>
        ) : (
          <b>{formatNumber(balancedAccuracy, 2)}</b>
        )}{' '}
        {balancedAccuracy !== null && interval === null ? (
          <span className="quiet small">too few for an interval</span>
        ) : null}
        {balancedAccuracy !== null && interval !== null ? (
          <>
            <span className="quiet small">
              ({formatNumber(interval[0], 2)} to {formatNumber(interval[1], 2)})
            </span>
            <RecordBar value={balancedAccuracy} interval={interval} />
          </>
        ) : null}
      </td>
      <td className="number" data-label="Alloys">
        {formatCount(n)}
      </td>
      <td data-label="Right and wrong" className="small">
        Said yes: {formatCount(tp ?? 0)} right, {formatCount(fp ?? 0)} wrong.
        <br />
        Said no: {formatCount(tn ?? 0)} right, {formatCount(fn ?? 0)} wrong.
      </td>
    </>
  );
}
