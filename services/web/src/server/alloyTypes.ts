import type { Limit } from '@tiegel/contract';
import type { Source } from '@tiegel/screening';

/** What the server says of one alloy beyond its quantities: answers of POST /explain, /substitute, /weighing, GET /evidence. */

export const phaseClasses = ['fcc', 'bcc', 'both', 'other'] as const;
export type PhaseClass = (typeof phaseClasses)[number];

export type Amounts = Record<string, number>;
export type Values = Record<string, number | null>;

/** A statement of a model with how far to trust it. */
interface Statement {
  words: string;
  trust: string;
}

export interface PhaseEstimate extends Statement, Record<PhaseClass, number | null> {
  singleSolution: number | null;
  basis: 'ok' | 'weak' | 'none';
  nearestDistance: number;
  likely: PhaseClass[] | null;
}

interface Demixing extends Statement {
  temperature: number | null;
  ratioToMelting: number | null;
  mode: Amounts;
}

interface Ordering extends Demixing {
  sublattices: string[][];
}

interface Compounds extends Statement {
  hullDistance: number;
  competing: { formula: string; fraction: number }[];
  temperature: number;
  solutionFreeEnergy: number;
  competingEnthalpy: number;
}

export interface PairAffinity extends Statement {
  temperature: number;
  coordination: number;
  pairs: { a: string; b: string; shortRangeOrder: number; weight: number; limited: boolean }[];
  validAbove: number | null;
}

export interface Neighbour {
  formula: string;
  composition: Amounts;
  distance: number;
  phases: string | null;
  reports: { phases: string; references: number }[];
  doi: string[];
  /** of the laboratory: brought in, under the number of that import, or melted, under the id of the melt */
  own: boolean;
  import: number | null;
  melt: string | null;
  /** how the phases of a melt were observed */
  methods: string[];
}

interface Paragraph {
  subject: string;
  heading: string;
  text: string;
  trust: string | null;
  sources: string[];
}

/** What melts of one's own make of the phase estimate. */
interface Recalibration {
  /** none: too few melts */
  kind: 'none' | 'level' | 'slope';
  counted: Record<'melts' | 'systems' | 'one' | 'more', number>;
}

/** The phase estimate recalibrated on melts of one's own. */
interface OwnPhase {
  /** null: too few melts, or no basis for the estimate */
  singleSolution: number | null;
  interval: Interval | null;
  recalibration: Recalibration;
  /** what it was made from, or what is still missing */
  basis: string;
}

/** POST /explain */
export interface Explanation {
  composition: Amounts;
  conditions: Values;
  /** of the data and prices in force */
  dataVersion: string;
  quantities: Values;
  criteria: Record<string, boolean | null>;
  phase: PhaseEstimate;
  demixing: Demixing | null;
  ordering: Ordering | null;
  compounds: Compounds | null;
  nearest: Neighbour[];
  own: OwnPhase | null;
  affinity: PairAffinity | null;
  paragraphs: Paragraph[];
}

/** One item of POST /substitute. */
export interface Substitute {
  replaced: Amounts;
  by: Amounts;
  composition: Amounts;
  quantities: Values;
  changes: Values;
  phase: PhaseEstimate | null;
  demixing: Demixing | null;
  cost: number | null;
  limits: (boolean | null)[];
  /** what of the space that was sent it breaks, in words */
  outsideSpace: string[];
  score: number | null;
}

interface Verdict {
  passes: boolean | null;
  canFlip: boolean;
}

/** POST /weighing */
export interface WeighingError {
  masses: Amounts;
  shares: Record<string, { value: number; least: number; greatest: number }>;
  quantities: Record<
    string,
    { value: number | null; least: number | null; greatest: number | null; mayLack: boolean }
  >;
  limits: (Verdict & { limit: Limit })[];
  criteria: Record<string, Verdict>;
  trust: string;
}

/** GET /quantities/typical: quartiles over the published alloys, by quantity. */
export interface TypicalRange {
  low: number;
  middle: number;
  high: number;
}
export type TypicalRanges = Record<string, TypicalRange | null>;

type Interval = [number, number];

export interface CriterionRecord {
  id: string;
  name: string;
  claim: string;
  formula: string;
  scope: string | null;
  positiveClass: string;
  predicts: string | null;
  /** a phase beside the solution: to meet the rule is bad news */
  predictsSecondPhase: boolean;
  source: Source;
  caution: string | null;
  n: number | null;
  tp: number | null;
  fp: number | null;
  fn: number | null;
  tn: number | null;
  balancedAccuracy: number | null;
  interval: Interval | null;
  untested: string | null;
}

/** Rules and the phase estimate on melts of one's own. */
export interface OwnEvidence {
  melts: number;
  systems: number;
  criteria: (Record<'n' | 'tp' | 'fp' | 'fn' | 'tn', number> & {
    id: string;
    balancedAccuracy: number | null;
    interval: Interval | null;
  })[];
  phaseEstimate: {
    n: number;
    withoutBasis: number;
    baseRate: number | null;
    auc: number | null;
    interval: Interval | null;
    brier: number | null;
    logLoss: number | null;
    fourClassAccuracy: number | null;
  };
  trust: string;
}

/** GET /evidence */
export interface Evidence {
  /** null: no melt of one's own has observed phases */
  own: OwnEvidence | null;
  recalibration: Recalibration & { words: string };
  criteria: CriterionRecord[];
  phaseEstimate: {
    validation: string;
    n: number;
    systems: number;
    auc: number;
    brier: number;
    brierSkill: number;
    logLoss: number;
    calibrationError: number;
    balancedAccuracy: number;
    fourClassAccuracy: number;
    fccAgainstBcc: number;
    conformalCoverage: number;
    intervals: Record<'auc' | 'brierSkill' | 'balancedAccuracy', Interval>;
    aucSpread: number;
    reliability: { from: number; to: number; count: number; said: number; happened: number }[];
    byDistance: { from: number; to: number; alloys: number; auc: number | null; brierSkill: number | null }[];
    baseRate: number;
    baseRateLogLoss: number;
    baseRateBrier: number;
    bestRule: { id: string; name: string; balancedAccuracy: number; interval: Interval } | null;
    trust: string;
  };
  strength: {
    id: string;
    what: string;
    from: number;
    to: number;
    n: number;
    medianError: number;
    rankCorrelation: number;
    withinFactor: number;
    medianRatio: number;
    farthestRatio: number;
  }[];
}
