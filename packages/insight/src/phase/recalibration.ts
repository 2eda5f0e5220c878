/** An answer of the estimate to a melt of one's own, and what was observed. */
export interface OwnAnswer {
  /** of one solution, above 0 and below 1 */
  probability: number;
  /** one solution was observed */
  yes: boolean;
  /** element system: melts of one system are neighbours */
  system: string;
}

/** Melts that a recalibration asks for. */
export interface MeltsNeeded {
  melts: number;
  systems: number;
  /** melts that were observed to be one solution, and melts that were not */
  one: number;
  more: number;
}

/** The estimate's logarithm of the odds, moved (`intercept`) and stretched (`slope`) to what one's own melts were. */
interface LogisticFit {
  intercept: number;
  /** 1 where only the intercept was fitted */
  slope: number;
  /** variances and covariance of both, the greater of the model's and of that between systems */
  covariance: readonly [intercept: number, both: number, slope: number];
}

/** What the melts of one's own make of the estimate of one solution. */
export interface Recalibration {
  /** none: too few melts; level: intercept alone; slope: intercept and slope */
  kind: 'none' | 'level' | 'slope';
  /** what there is, of melts with observed phases that the estimate had not learnt from */
  counted: MeltsNeeded;
  /** what still lacks for the level; all 0 where there is one */
  missing: MeltsNeeded;
  /** null for kind none */
  fit: LogisticFit | null;
}

/** A recalibrated probability of one solution, with its 95 % interval. */
export interface Recalibrated {
  singleSolution: number;
  interval: readonly [low: number, high: number];
}

/**
 * So many melts before the level is moved. By simulation over the probabilities of the published alloys
 * (test/phase/recalibration.test.ts repeats it): where a laboratory's odds are off by a factor of 1.6,
 * twenty melts are where moving the level begins to gain; where nothing is off it costs 0.02 nat a melt.
 * Of both kinds five, for the intercept of few is not finite or nearly so; of five systems, as for an
 * interval of ownEvidence.
 */
export const neededForLevel: MeltsNeeded = { melts: 20, systems: 5, one: 5, more: 5 };

/**
 * So many before the slope is fitted too. By the same simulation, with a slope of 0.6: at 60 melts it
 * gains hardly more than the level alone, at 100 it gains, and costs 0.01 nat where nothing is off.
 */
export const neededForSlope: MeltsNeeded = { melts: 100, systems: 5, one: 20, more: 20 };

/** Shrinks the slope towards 1 as one observation of a normal distribution of spread 1 would. Ours, no source. */
const slopePenalty = 1;
const mostSteps = 100;
const smallStep = 1e-10;
const rounding = 1e-14;
/** 97.5 % of a normal distribution */
const normalQuantile = 1.959964;

/**
 * Logistic recalibration on melts of one's own: p' = 1/(1 + exp(−a − b ln(p/(1 − p)))), b = 1 until
 * there are very many melts. Of the variances of a and b the greater of two is taken: that of the
 * likelihood, and the one between systems (a sandwich), for melts of one system are neighbours.
 *
 * @source Cox, Biometrika 45 (1958) 562; Van Calster et al., J. Clin. Epidemiol. 74 (2016) 167 (levels of
 *   calibration); Steyerberg et al., Stat. Med. 23 (2004) 2567 (few data: the intercept alone). From memory.
 */
export function recalibrationOf(answers: readonly OwnAnswer[]): Recalibration {
  const one = answers.filter(({ yes }) => yes).length;
  const systems = new Set(answers.map(({ system }) => system)).size;
  const counted = { melts: answers.length, systems, one, more: answers.length - one };
  const missing = lacking(counted, neededForLevel);
  if (isAnyLacking(missing)) return { kind: 'none', counted, missing, fit: null };
  const kind = isAnyLacking(lacking(counted, neededForSlope)) ? 'level' : 'slope';
  return { kind, counted, missing, fit: fitLogistic(answers, kind === 'slope') };
}

/**
 * The recalibrated probability of an alloy of which the estimate says `probability`; null without a
 * recalibration. The interval is that of the recalibration alone: it says nothing of what the estimate
 * leaves out, and where melts are few in number it is wide.
 */
export function recalibrated(probability: number, { fit }: Recalibration): Recalibrated | null {
  if (fit === null) return null;
  const { intercept, slope, covariance } = fit;
  const odds = logit(probability);
  const centre = intercept + slope * odds;
  const spread = Math.sqrt(covariance[0] + 2 * odds * covariance[1] + odds * odds * covariance[2]);
  return {
    singleSolution: logistic(centre),
    interval: [logistic(centre - normalQuantile * spread), logistic(centre + normalQuantile * spread)],
  };
}

function lacking(counted: MeltsNeeded, needed: MeltsNeeded): MeltsNeeded {
  const short = (name: keyof MeltsNeeded) => Math.max(0, needed[name] - counted[name]);
  return { melts: short('melts'), systems: short('systems'), one: short('one'), more: short('more') };
}

function isAnyLacking(missing: MeltsNeeded): boolean {
  return Object.values(missing).some((count) => count > 0);
}

/** Newton's method on the penalised likelihood, with steps halved until it rises: it has one maximum. */
function fitLogistic(answers: readonly OwnAnswer[], withSlope: boolean): LogisticFit {
  let at = { intercept: 0, slope: 1 };
  for (let step = 0; step < mostSteps; step++) {
    const { gradient, information } = derivatives(answers, at);
    const [da, db] = withSlope ? solve(information, gradient) : [gradient[0] / information[0], 0];
    if (Math.abs(da) + Math.abs(db) < smallStep) break;
    let share = 1;
    // At the top both differ by rounding alone, and the whole step is the better one.
    const before = likelihood(answers, at) - rounding * answers.length;
    const next = () => ({ intercept: at.intercept + share * da, slope: at.slope + share * db });
    while (share > smallStep && likelihood(answers, next()) < before) share /= 2;
    at = next();
  }
  return { ...at, covariance: covarianceAt(answers, at, withSlope) };
}

type Line = Pick<LogisticFit, 'intercept' | 'slope'>;
/** the symmetric matrix [[0, 1], [1, 2]] by its entries */
type Symmetric = readonly [number, number, number];

function likelihood(answers: readonly OwnAnswer[], { intercept, slope }: Line): number {
  const sum = answers.reduce((total, { probability, yes }) => {
    const odds = intercept + slope * logit(probability);
    // ln p = −ln(1 + e^−x), written so that neither side overflows.
    const of = yes ? odds : -odds;
    return total - (Math.max(0, -of) + Math.log1p(Math.exp(-Math.abs(of))));
  }, 0);
  return sum - (slopePenalty / 2) * (slope - 1) ** 2;
}

function derivatives(
  answers: readonly OwnAnswer[],
  { intercept, slope }: Line,
): { gradient: readonly [number, number]; information: Symmetric } {
  let [ga, gb, aa, ab, bb] = [0, -slopePenalty * (slope - 1), 0, 0, slopePenalty];
  for (const { probability, yes } of answers) {
    const odds = logit(probability);
    const said = logistic(intercept + slope * odds);
    const [miss, weight] = [(yes ? 1 : 0) - said, said * (1 - said)];
    ga += miss;
    gb += miss * odds;
    aa += weight;
    ab += weight * odds;
    bb += weight * odds * odds;
  }
  return { gradient: [ga, gb], information: [aa, ab, bb] };
}

function solve([aa, ab, bb]: Symmetric, [ga, gb]: readonly [number, number]): readonly [number, number] {
  const determinant = aa * bb - ab * ab;
  return [(bb * ga - ab * gb) / determinant, (aa * gb - ab * ga) / determinant];
}

/** Of each, the greater of the likelihood's and the one between systems, as whole matrices by their trace. */
function covarianceAt(answers: readonly OwnAnswer[], at: Line, withSlope: boolean): Symmetric {
  const { information } = derivatives(answers, at);
  const groups = [...Map.groupBy(answers, ({ system }) => system).values()];
  const scores = groups.map((group) => {
    const misses = group.map(({ probability, yes }) => {
      const odds = logit(probability);
      return [(yes ? 1 : 0) - logistic(at.intercept + at.slope * odds), odds] as const;
    });
    return [sum(misses.map(([miss]) => miss)), sum(misses.map(([miss, odds]) => miss * odds))] as const;
  });
  const few = groups.length / (groups.length - 1);
  if (!withSlope) {
    const ofModel = 1 / information[0];
    const between = few * ofModel * ofModel * sum(scores.map(([a]) => a * a));
    return [Math.max(ofModel, between), 0, 0];
  }
  const [aa, ab, bb] = information;
  const determinant = aa * bb - ab * ab;
  const ofModel: Symmetric = [bb / determinant, -ab / determinant, aa / determinant];
  const moved = scores.map((score) => solve(information, score));
  const between: Symmetric = [
    few * sum(moved.map(([a]) => a * a)),
    few * sum(moved.map(([a, b]) => a * b)),
    few * sum(moved.map(([, b]) => b * b)),
  ];
  return between[0] + between[2] > ofModel[0] + ofModel[2] ? between : ofModel;
}

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const logit = (probability: number) => Math.log(probability / (1 - probability));
const logistic = (odds: number) => 1 / (1 + Math.exp(-odds));
