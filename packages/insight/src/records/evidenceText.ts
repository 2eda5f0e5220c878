import type { Source } from '@tiegel/screening';
import { numberInWords, percentInWords } from '../inWords.ts';
import type { StrengthComparison } from './compareStrengths.ts';
import type { CriterionRecord } from './criterionRecords.ts';
import type { Evidence, PhaseEstimateRecord } from './evidence.ts';

/** The evidence as a Markdown document for people. */
export function evidenceText({ criteria, phaseEstimate, strength }: Evidence): string {
  return `${[
    '# Evidence',
    'How far the criteria, the phase estimate and the strengths were right on the open published alloys ' +
      '(Borg et al., Sci. Data 7 (2020) 430). Written by `npm run train`; do not edit.',
    ...criteriaSection(criteria),
    ...phaseSection(phaseEstimate),
    ...strengthSection(strength),
  ].join('\n\n')}\n`;
}

function criteriaSection(records: readonly CriterionRecord[]): string[] {
  return [
    '## Criteria',
    'Balanced accuracy: the mean of the shares of positives and of negatives that a rule got right; a coin ' +
      'has 0.50. Intervals are of 95 %, from resampling whole systems. **Passing every rule proves little**: ' +
      'the sample holds alloys that people thought worth melting.',
    table(
      ['Rule', 'Claim', 'Formula', 'Source', 'Right +', 'Wrong +', 'Wrong −', 'Right −', 'Balanced accuracy'],
      records.map((record) => [
        record.name,
        record.claim,
        record.scope === null ? record.formula : `${record.formula} (${record.scope})`,
        sourceText(record.source),
        ...[record.tp, record.fp, record.fn, record.tn].map((count) => (count === null ? '' : String(count))),
        record.balancedAccuracy === null || record.interval === null
          ? `not testable here: ${record.untested ?? 'no alloy of its class'}`
          : withInterval(record.balancedAccuracy, record.interval),
      ]),
    ),
  ];
}

function phaseSection(found: PhaseEstimateRecord): string[] {
  const { intervals, bestRule } = found;
  return [
    '## Phase estimate',
    `One disordered fcc or bcc solution or not; ${found.n} alloys of ${found.systems} systems, ` +
      `${percentInWords(found.baseRate)} of them one solution. ${found.validation}`,
    table(
      ['Score', 'Estimate', 'To compare'],
      [
        ['AUC', withInterval(found.auc, intervals.auc), 'a coin: 0.50'],
        ['AUC from draw to draw, standard deviation', two(found.aucSpread), ''],
        ['Log loss, nat', three(found.logLoss), `base rate: ${three(found.baseRateLogLoss)}`],
        ['Brier score', three(found.brier), `base rate: ${three(found.baseRateBrier)}`],
        ['Brier skill', withInterval(found.brierSkill, intervals.brierSkill), 'base rate: 0.00'],
        ['Calibration error', three(found.calibrationError), ''],
        [
          'Balanced accuracy, cut at 0.5',
          withInterval(found.balancedAccuracy, intervals.balancedAccuracy),
          bestRule === null
            ? ''
            : `best rule, ${bestRule.name}: ${withInterval(bestRule.balancedAccuracy, bestRule.interval)}`,
        ],
        ['Likeliest of four classes right', percentInWords(found.fourClassAccuracy), ''],
        ['fcc against bcc, among one-phase alloys', percentInWords(found.fccAgainstBcc), ''],
        ['Reported class in the 80 % set', percentInWords(found.conformalCoverage), 'asked: 80 %'],
      ],
    ),
    'Reliability: what happened where a probability was said. Where more was said than happened, it says one solution too often.',
    table(
      ['Said', 'Alloys a draw', 'Mean said', 'Happened'],
      found.reliability.map(({ from, to, count, said, happened }) => [
        `${numberInWords(from, 1)} to ${numberInWords(to, 1)}`,
        numberInWords(count, 1),
        said === null ? '' : two(said),
        happened === null ? '' : two(happened),
      ]),
    ),
    'By distance to the nearest alloy of another system (share of atoms that differ).',
    table(
      ['Distance', 'Alloys', 'AUC', 'Brier skill'],
      found.byDistance.map(({ from, to, alloys, auc, brierSkill }) => [
        `${two(from)} to ${two(to)}`,
        String(alloys),
        auc === null ? '' : two(auc),
        brierSkill === null ? '' : two(brierSkill),
      ]),
    ),
  ];
}

function strengthSection(comparisons: readonly StrengthComparison[]): string[] {
  return [
    '## Strength',
    'Computed yield strength against the measured one of alloys reported as one phase, each composition once ' +
      'at a temperature (and grain size, where it enters). Ratios are computed over measured.',
    table(
      [
        'Alloys',
        'K',
        'n',
        'Median error',
        'Rank correlation',
        'Within 1.5×',
        'Median ratio',
        'Farthest ratio',
      ],
      comparisons.map((one) => [
        one.what,
        `${Math.round(one.from)} to ${Math.round(one.to)}`,
        String(one.n),
        percentInWords(one.medianError),
        two(one.rankCorrelation),
        percentInWords(one.withinFactor),
        two(one.medianRatio),
        two(one.farthestRatio),
      ]),
    ),
  ];
}

function sourceText({ authors, year, where, checked }: Source): string {
  return `${authors}, ${where}${year === null ? '' : ` (${year})`}; ${checked}`;
}

/** Columns are padded to one width, as the formatter of this project has them. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = head.map((cell, column) =>
    Math.max(3, cell.length, ...rows.map((row) => row[column]!.length)),
  );
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column]!)).join(' | ')} |`;
  return [line(head), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n');
}

const two = (value: number) => numberInWords(value, 2);
const three = (value: number) => numberInWords(value, 3);

function withInterval(value: number, [low, high]: readonly [number, number]): string {
  return `${two(value)} (${two(low)} to ${two(high)})`;
}
