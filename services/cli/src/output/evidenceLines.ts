import type { CriterionRecord, Evidence, OwnEvidence } from '@tiegel/insight';
import { wrapped } from './inWords.ts';
import { table } from './table.ts';

/** The evidence for reading: the record of each rule, of the phase estimate, and of the strengths; then of one's own melts and of alloys that were brought in, where there are some. */
export function* evidenceLines({
  criteria,
  phaseEstimate,
  strength,
  own,
  broughtIn,
  recalibration,
}: Evidence & {
  own: OwnEvidence | null;
  broughtIn: OwnEvidence | null;
  recalibration: { words: string } | null;
}): Generator<string> {
  yield `${ruleTable(criteria).join('\n')}\n`;
  yield `${wrapped('TP and FP: alloys where the rule holds, rightly and wrongly; FN and TN: where it does not, wrongly and rightly. Balanced accuracy with its interval of 95 % from resampling whole systems; a coin has 0.50. Claims, formulas and sources: --json.')}\n\n`;
  yield `Phase estimate\n${estimateTable(phaseEstimate).join('\n')}\n`;
  yield `${wrapped(`${phaseEstimate.validation} ${phaseEstimate.trust}`)}\n\n`;
  yield `Yield strength, computed against measured\n${strengthTable(strength).join('\n')}\n`;
  if (own !== null) yield* ownLines('Your own melts', own, criteria);
  if (broughtIn !== null) yield* ownLines('Alloys that were brought in', broughtIn, criteria);
  if (recalibration !== null) yield `${wrapped(recalibration.words)}\n`;
}

function* ownLines(
  head: string,
  { criteria, phaseEstimate, trust }: OwnEvidence,
  rules: readonly CriterionRecord[],
) {
  const named = rules.flatMap((rule) => {
    const record = criteria.find(({ id }) => id === rule.id);
    return record === undefined ? [] : [{ ...rule, ...record }];
  });
  const { n, withoutBasis, auc, brier } = phaseEstimate;
  yield `\n${head}\n${ruleTable(named).join('\n')}\n`;
  yield `${wrapped(`Phase estimate: ${n} of them, ${withoutBasis} without a basis, AUC ${auc?.toFixed(2) ?? '–'}, Brier score ${brier?.toFixed(2) ?? '–'}. ${trust}`)}\n`;
}

function ruleTable(records: readonly CriterionRecord[]): string[] {
  const counts = ['TP', 'FP', 'FN', 'TN'].map((head) => ({ head }));
  return table(
    [{ head: 'rule', align: 'left' }, ...counts, { head: 'balanced' }, { head: '95 %' }],
    records.map(({ name, tp, fp, fn, tn, balancedAccuracy, interval }) => [
      name,
      ...[tp, fp, fn, tn].map((count) => (count === null ? null : String(count))),
      balancedAccuracy?.toFixed(3) ?? null,
      interval === null ? null : between(interval),
    ]),
  );
}

function estimateTable(found: Evidence['phaseEstimate']): string[] {
  const { n, systems, auc, intervals, logLoss, baseRateLogLoss, brierSkill, calibrationError } = found;
  const { balancedAccuracy, fourClassAccuracy, fccAgainstBcc, baseRate, bestRule } = found;
  return table(
    [{ head: 'score', align: 'left' }, { head: 'value' }, { head: 'beside it', align: 'left' }],
    [
      ['alloys', String(n), `of ${systems} systems, ${(100 * baseRate).toFixed(0)} % of them one solution`],
      ['AUC', auc.toFixed(3), `95 %: ${between(intervals.auc)}; a coin has 0.500`],
      ['log loss, nat', logLoss.toFixed(3), `the base rate alone: ${baseRateLogLoss.toFixed(3)}`],
      ['Brier skill', brierSkill.toFixed(3), 'the base rate alone: 0'],
      ['calibration error', calibrationError.toFixed(3), '0 is calibrated'],
      ['balanced accuracy', balancedAccuracy.toFixed(3), besides(bestRule)],
      ['four classes right', fourClassAccuracy.toFixed(3), ''],
      ['fcc against bcc', fccAgainstBcc.toFixed(3), 'of alloys of one solution'],
    ],
  );
}

function besides(rule: Evidence['phaseEstimate']['bestRule']): string {
  return rule === null ? '' : `the best rule, ${rule.name}: ${rule.balancedAccuracy.toFixed(3)}`;
}

function strengthTable(strengths: Evidence['strength']): string[] {
  return table(
    [
      { head: 'alloys', align: 'left' },
      { head: 'T', unit: 'K' },
      { head: 'n' },
      { head: 'error', unit: 'median' },
    ],
    strengths.map(({ what, from, to, n, medianError }) => [
      what,
      `${from.toFixed(0)}–${to.toFixed(0)}`,
      String(n),
      `${(100 * medianError).toFixed(0)} %`,
    ]),
  );
}

const between = ([low, high]: readonly [number, number]) => `${low.toFixed(2)}–${high.toFixed(2)}`;
