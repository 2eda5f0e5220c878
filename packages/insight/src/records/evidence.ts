import { trainedCriteria } from '../data/criteria.ts';
import { trainedPhaseReport } from '../data/phaseReport.ts';
import { comparedStrengths } from '../data/strengths.ts';
import { phaseTrust } from '../phase/phaseOf.ts';
import type { PhaseReport } from '../phase/phaseReport.ts';
import type { StrengthComparison } from './compareStrengths.ts';
import { type CriterionRecord, criterionRecords } from './criterionRecords.ts';
import type { Measured } from './measureCriteria.ts';

/** What stands behind the verdicts, the phase estimate and the strengths: measured on published alloys. */
export interface Evidence {
  criteria: CriterionRecord[];
  phaseEstimate: PhaseEstimateRecord;
  strength: readonly StrengthComparison[];
}

/** How the phase estimate did on alloys of systems that it had not seen. Scores are of one solution or not, unless they say otherwise. */
export interface PhaseEstimateRecord {
  /** How it was tried, in words. */
  validation: string;
  /** alloys, and element systems */
  n: number;
  systems: number;
  auc: number;
  brier: number;
  brierSkill: number;
  /** nat */
  logLoss: number;
  calibrationError: number;
  balancedAccuracy: number;
  fourClassAccuracy: number;
  fccAgainstBcc: number;
  conformalCoverage: number;
  /** 95 %, from resampling whole systems */
  intervals: PhaseReport['intervals'];
  /** standard deviation of the AUC from draw to draw of the folds */
  aucSpread: number;
  reliability: PhaseReport['reliability'];
  byDistance: PhaseReport['byDistance'];
  /** share of the alloys that are one solution; always saying it scores the log loss and Brier score beside it */
  baseRate: number;
  baseRateLogLoss: number;
  baseRateBrier: number;
  /** the published rule for one solution with the highest balanced accuracy */
  bestRule: {
    id: string;
    name: string;
    balancedAccuracy: number;
    interval: readonly [number, number];
  } | null;
  trust: string;
}

/** What `npm run train` found. */
export interface Findings {
  criteria: Readonly<Record<string, Measured>>;
  phase: PhaseReport;
  strengths: readonly StrengthComparison[];
}

const found: Findings = {
  criteria: trainedCriteria,
  phase: trainedPhaseReport,
  strengths: comparedStrengths,
};

/** The evidence on the open published alloys. A read: it was measured when the project was trained. */
export function evidence({ criteria, phase, strengths }: Findings = found): Evidence {
  const records = criterionRecords(criteria);
  return { criteria: records, phaseEstimate: phaseEstimateRecord(phase, records), strength: strengths };
}

function phaseEstimateRecord(phase: PhaseReport, records: readonly CriterionRecord[]): PhaseEstimateRecord {
  const { alloys, systems, draws, baseRate, scores } = phase;
  const { conformalSize: _, ...shown } = scores;
  return {
    validation:
      `Whole element systems left out: five folds stratified by class, all out-of-fold probabilities ` +
      `pooled, mean of ${draws} draws of the folds (seeds 0 to ${draws - 1}).`,
    n: alloys,
    systems,
    ...shown,
    intervals: phase.intervals,
    aucSpread: phase.aucSpread,
    reliability: phase.reliability,
    byDistance: phase.byDistance,
    baseRate,
    baseRateLogLoss: -baseRate * Math.log(baseRate) - (1 - baseRate) * Math.log(1 - baseRate),
    baseRateBrier: baseRate * (1 - baseRate),
    bestRule: bestRuleOf(records),
    trust: phaseTrust,
  };
}

function bestRuleOf(records: readonly CriterionRecord[]): PhaseEstimateRecord['bestRule'] {
  const [best] = records
    .filter(({ predicts }) => predicts === 'one solution')
    .sort((a, b) => (b.balancedAccuracy ?? 0) - (a.balancedAccuracy ?? 0));
  if (best === undefined || best.balancedAccuracy === null || best.interval === null) return null;
  return {
    id: best.id,
    name: best.name,
    balancedAccuracy: best.balancedAccuracy,
    interval: best.interval,
  };
}
