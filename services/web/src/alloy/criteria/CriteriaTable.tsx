import type { CriterionRecord, WeighingError } from '@tiegel/contract';
import { verdictInWords } from '@tiegel/contract/terms';
import { silenceInWords } from '@tiegel/screening';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { Notation } from '../../words/Notation.tsx';
import { tied } from '../../words/tied.ts';
import { Dimmed } from '../Dimmed.tsx';
import { sourceInWords } from '../quantities/sourceInWords.ts';
import type { AlloyState } from '../state/alloyState.ts';
import { RecordBar } from './RecordBar.tsx';
import './criteria.css';
import { WideContent } from '../../frame/WideContent.tsx';

interface CriteriaTableProps {
  alloy: AlloyState;
  /** what weighing can turn, where it was asked */
  weighing: WeighingError | null;
}

/** Every published rule: what it says of the alloy, and how often it was right on published alloys. */
export function CriteriaTable({ alloy, weighing }: CriteriaTableProps) {
  const { explanation, evidence } = alloy;
  if (!explanation || !evidence) return null;
  const values = { ...alloy.values, ...explanation.quantities };
  return (
    <section aria-labelledby="criteria">
      <h2 id="criteria">Published rules, and their record</h2>
      <p className="read-small">
        A rule is as good as its record: <b>balanced accuracy</b> on published alloys, with the interval of 95
        % from resampling whole systems. A coin has {formatNumber(0.5, 2)} (the line in the bars). Passing
        every rule proves little: published alloys are those that people thought worth melting, most inside
        the windows already.
      </p>
      <Dimmed alloy={alloy}>
        <WideContent label="The rules as a table">
          <table className="plain-table criteria-table cards">
            <thead>
              <tr>
                <th scope="col">Rule</th>
                <th scope="col">Here</th>
                <th scope="col">Claims</th>
                <th scope="col">Record</th>
                <th scope="col" className="number">
                  Alloys
                </th>
              </tr>
            </thead>
            <tbody>
              {evidence.criteria.map((record) => (
                <CriterionRow
                  key={record.id}
                  record={record}
                  verdict={explanation.criteria[record.id] ?? null}
                  silence={silenceInWords(record.id, alloy.composition, values)}
                  canFlip={weighing?.criteria[record.id]?.canFlip === true}
                />
              ))}
            </tbody>
          </table>
        </WideContent>
      </Dimmed>
    </section>
  );
}

interface CriterionRowProps {
  record: CriterionRecord;
  verdict: boolean | null;
  silence: string;
  canFlip: boolean;
}

function CriterionRow({ record, verdict, silence, canFlip }: CriterionRowProps) {
  const {
    name,
    formula,
    claim,
    scope,
    source,
    caution,
    n,
    balancedAccuracy,
    interval,
    untested,
    positiveClass,
  } = record;
  return (
    <tr>
      <th scope="row" className="plain">
        <b>{name}</b>
        <span className="criterion-formula">
          <Notation text={tied(formula)} />
          {scope ? (
            <>
              {' '}
              (only alloys <Notation text={scope} />)
            </>
          ) : null}
        </span>
        <details className="small">
          <summary>Source and caution</summary>
          <p>{sourceInWords(source)}</p>
          {caution ? <p>{caution}</p> : null}
        </details>
      </th>
      <td className="criterion-verdict" data-label="Here">
        {verdict === null ? (
          <span className="quiet">{silence}</span>
        ) : (
          <Verdict record={record} verdict={verdict} />
        )}
        {canFlip ? <span className="caution-word small"> weighing can turn it</span> : null}
      </td>
      <td data-label="Claims">
        {claim} <span className="quiet small">({positiveClass})</span>
      </td>
      <td data-label="Record">
        {balancedAccuracy === null || interval === null ? (
          <span className="quiet">{untested ?? 'not tested'}</span>
        ) : (
          <>
            {formatNumber(balancedAccuracy, 2)}{' '}
            <span className="quiet small">
              ({formatNumber(interval[0], 2)} to {formatNumber(interval[1], 2)})
            </span>
            <RecordBar value={balancedAccuracy} interval={interval} />
          </>
        )}
      </td>
      <td className="number" data-label="Alloys">
        {n === null ? '' : formatCount(n)}
      </td>
    </tr>
  );
}

/** Sign and colour go by what follows: a second phase that a rule expects is bad news, though the rule is met. */
function Verdict({ record, verdict }: { record: CriterionRecord; verdict: boolean }) {
  const { predictsSecondPhase } = record;
  const kind = predictsSecondPhase ? 'criterion-second-phase ' : '';
  const bad = predictsSecondPhase ? 'unmet' : 'unmet-plain';
  const good = verdict !== predictsSecondPhase;
  return <span className={kind + (good ? 'met' : bad)}>{verdictInWords(record, verdict)}</span>;
}
