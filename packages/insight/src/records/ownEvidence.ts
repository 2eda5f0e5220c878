import { factsFor, symbols } from '@tiegel/elements';
import { atOnce } from '../atOnce.ts';
import { type Phase, phaseOf } from '../phase/phaseOf.ts';
import {
  type Answer,
  areaUnderCurve,
  areaUnderCurveOf,
  baseRate,
  brierScore,
  logLoss,
  mean,
} from '../phase/scores.ts';
import {
  type Case,
  casesOfCriteria,
  type Measured,
  measured,
  type ObservedAlloy,
} from './measureCriteria.ts';
import { resamplingSteps } from './resampledInterval.ts';

/** The record of a rule on one's own melts; null where they are too few to say. */
export interface OwnRecord extends Omit<Measured, 'balancedAccuracy' | 'interval'> {
  id: string;
  /** null without a melt that is of the class, or without one that is not */
  balancedAccuracy: number | null;
  /** 95 %, from resampling whole systems; null where the rule speaks of fewer than `leastMelts` melts or `leastSystems` systems */
  interval: readonly [low: number, high: number] | null;
}

/** How rules and the phase estimate did on a laboratory's own melts. */
export interface OwnEvidence {
  /** melts whose phases were observed, and the systems that they are of */
  melts: number;
  systems: number;
  criteria: OwnRecord[];
  phaseEstimate: OwnEstimate;
  /** How far to trust it. */
  trust: string;
}

/** Scores of one solution or not, on the melts for which the estimate has a number; null where they are too few. */
export interface OwnEstimate {
  n: number;
  /** melts too far from every published alloy for an estimate */
  withoutBasis: number;
  baseRate: number | null;
  auc: number | null;
  /** of the AUC, 95 % */
  interval: readonly [low: number, high: number] | null;
  brier: number | null;
  /** nat */
  logLoss: number | null;
  /** share of the melts whose likeliest class was the observed one */
  fourClassAccuracy: number | null;
}

/** Below these, an interval would only look like knowledge. Ours, no source. */
export const leastMelts = 20;
export const leastSystems = 5;

/**
 * The records of the criteria and of the phase estimate on melts of one's own, of which only those
 * with observed phases count. The estimate learnt from published alloys alone, but a melt may have the
 * composition of one of them; then it is no new test.
 * @param what 'alloys': those that were brought in instead, counted under the same names
 */
export function ownEvidence(
  melts: readonly ObservedAlloy[],
  what: 'melts' | 'alloys' = 'melts',
): OwnEvidence {
  return atOnce(ownEvidenceSteps(melts, what));
}

/** The same in steps of some milliseconds: of three thousand melts it takes seconds, and others can be answered in between. */
export function* ownEvidenceSteps(
  melts: readonly ObservedAlloy[],
  what: 'melts' | 'alloys',
): Generator<undefined, OwnEvidence> {
  const observed = melts.filter(({ phases }) => phases !== null);
  const systems = systemsIn(observed);
  const enough = isEnough(observed);
  const criteria: OwnRecord[] = [];
  for (const { id, cases } of yield* casesOfCriteria(observed)) {
    criteria.push(ownRecord(id, cases));
    yield;
  }
  return {
    ...{ melts: observed.length, systems, criteria },
    phaseEstimate: yield* ownEstimate(observed),
    trust:
      what === 'melts' ? trustIn(observed.length, systems, enough) : broughtInTrust(observed.length, systems),
  };
}

type OfSystem = Pick<ObservedAlloy, 'system'>;

const systemsIn = (alloys: readonly OfSystem[]): number => new Set(alloys.map(({ system }) => system)).size;

/**
 * Whether alloys are enough for an interval: to be asked of those that a number is counted on, not of all.
 * Two melts of which a rule is right both times would otherwise have the interval 1 to 1.
 */
const isEnough = (alloys: readonly OfSystem[]): boolean =>
  alloys.length >= leastMelts && systemsIn(alloys) >= leastSystems;

function ownRecord(id: string, cases: readonly Case[]): OwnRecord {
  const { balancedAccuracy, interval, ...counts } = measured(cases);
  const known = Number.isFinite(balancedAccuracy);
  return {
    ...{ id, ...counts },
    balancedAccuracy: known ? balancedAccuracy : null,
    interval: known && isEnough(cases) ? interval : null,
  };
}

function* ownEstimate(melts: readonly ObservedAlloy[]): Generator<undefined, OwnEstimate> {
  const facts = factsFor(symbols);
  const all: { alloy: ObservedAlloy; said: Phase }[] = [];
  for (const alloy of melts) {
    all.push({ alloy, said: phaseOf(alloy.composition, facts) });
    yield;
  }
  const told = all.filter(({ said }) => said.singleSolution !== null);
  const answers = told.map(
    ({ alloy, said }): Answer => ({
      probability: said.singleSolution!,
      yes: alloy.singlePhase === true,
    }),
  );
  const none = answers.length === 0;
  const both = answers.some(({ yes }) => yes) && answers.some(({ yes }) => !yes);
  const systems = told.map(({ alloy }) => alloy.system);
  return {
    n: answers.length,
    withoutBasis: all.length - told.length,
    baseRate: none ? null : baseRate(answers),
    auc: both ? areaUnderCurve(answers) : null,
    interval:
      both && isEnough(told.map(({ alloy }) => alloy))
        ? yield* resamplingSteps(systems, areaUnderCurveOf(answers))
        : null,
    brier: none ? null : brierScore(answers),
    logLoss: none ? null : logLoss(answers),
    fourClassAccuracy: none
      ? null
      : mean(told.map(({ alloy, said }) => (likeliest(said) === alloy.phaseClass ? 1 : 0))),
  };
}

/** The class that the estimate holds likeliest. */
function likeliest({ fcc, bcc, both, other }: Phase): string {
  const classes = Object.entries({ fcc: fcc ?? 0, bcc: bcc ?? 0, both: both ?? 0, other: other ?? 0 });
  return classes.reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}

function broughtInTrust(alloys: number, systems: number): string {
  const counted = `${alloys} ${alloys === 1 ? 'alloy' : 'alloys'} of ${systems} ${systems === 1 ? 'system' : 'systems'}`;
  return `Counted on ${counted} that were brought in with phases. Somebody chose them, and one of them may be among the published alloys that the estimate was trained on; then it is no new test.`;
}

function trustIn(melts: number, systems: number, enough: boolean): string {
  const counted = `${melts} ${melts === 1 ? 'melt' : 'melts'} of ${systems} ${systems === 1 ? 'system' : 'systems'}`;
  const few = enough
    ? ''
    : ` Fewer than ${leastMelts} melts or ${leastSystems} systems: the counts are shown, but nothing can be concluded from them, and no interval is given.`;
  return `Counted on ${counted} of your own with observed phases. A laboratory’s melts are chosen, often near one another, and observed by a few methods.${few}`;
}
