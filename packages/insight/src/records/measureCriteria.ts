import { factsFor, symbols } from '@tiegel/elements';
import { type PublishedAlloy, publishedAlloys } from '@tiegel/elements/publishedAlloys';
import {
  type Criterion,
  criteria,
  type PositiveClass,
  type QuantityValues,
  quantities,
  quantitiesOf,
  screening,
  verdictOf,
} from '@tiegel/screening';
import { atOnce } from '../atOnce.ts';
import { lateQuantities } from '../late/lateQuantities.ts';
import { lateValuesOf } from '../late/lateValuesOf.ts';
import { resampledInterval } from './resampledInterval.ts';

/** How often a criterion was right on published alloys. */
export interface Measured {
  /** alloys that it speaks of, whose class was reported, and for which its values exist */
  n: number;
  /** true and false positives and negatives: positive is a true verdict */
  tp: number;
  fp: number;
  fn: number;
  tn: number;
  /** mean of the shares of positives and of negatives that it got right; a coin: 0.5 */
  balancedAccuracy: number;
  /** 95 %, from resampling whole systems */
  interval: readonly [low: number, high: number];
}

/** An alloy that a criterion speaks of: what it said, and what was observed. */
export interface Case {
  system: string;
  verdict: boolean;
  positive: boolean;
}

/** What a record needs to know of an alloy whose phases were observed: a published one or a melt of one's own. */
export type ObservedAlloy = Pick<
  PublishedAlloy,
  'composition' | 'system' | 'phases' | 'phaseClass' | 'singlePhase'
>;

/**
 * Compares every criterion that observed labels can test with alloys, the published ones by default
 * (some seconds). By id. Without a positive or without a negative the balanced accuracy is NaN.
 */
export function measureCriteria(
  alloys: readonly ObservedAlloy[] = publishedAlloys(),
): Record<string, Measured> {
  return Object.fromEntries(atOnce(casesOfCriteria(alloys)).map(({ id, cases }) => [id, measured(cases)]));
}

/** Of every criterion that observed labels can test the alloys that it speaks of; in steps of an alloy each. */
export function* casesOfCriteria(
  alloys: readonly ObservedAlloy[],
): Generator<undefined, { id: string; cases: Case[] }[]> {
  const valuesOf = valuesOfCriteria();
  const valued: { alloy: ObservedAlloy; values: QuantityValues }[] = [];
  for (const alloy of alloys) {
    if (alloy.phases === null) continue;
    valued.push({ alloy, values: valuesOf(alloy) });
    yield;
  }
  return criteria.flatMap((criterion) => {
    const { observed } = criterion.positiveClass;
    return observed === null ? [] : [{ id: criterion.id, cases: casesOf(criterion, observed, valued) }];
  });
}

/** What gives an alloy's values of every quantity that a criterion names. */
function valuesOfCriteria(): (alloy: ObservedAlloy) => QuantityValues {
  const facts = factsFor(symbols);
  const named = [
    ...new Set(criteria.flatMap(({ predicate, scope }) => [predicate, scope ?? []].flat())),
  ].flatMap(quantitiesOf);
  const closedValues = screening(
    facts,
    named.filter((id) => quantities.some((quantity) => quantity.id === id)),
  );
  const late = lateQuantities.map(({ id }) => id).filter((id) => named.includes(id));
  return ({ composition }) => ({ ...closedValues(composition), ...lateValuesOf(composition, facts, late) });
}

function casesOf(
  criterion: Criterion,
  observed: NonNullable<PositiveClass['observed']>,
  valued: readonly { alloy: ObservedAlloy; values: QuantityValues }[],
): Case[] {
  return valued.flatMap(({ alloy, values }) => {
    const verdict = verdictOf(criterion, alloy.composition, values);
    const positive = isObserved[observed](alloy);
    return verdict === null || positive === null ? [] : [{ system: alloy.system, verdict, positive }];
  });
}

/** Whether a class was observed; null for an alloy that the class is not about. */
const isObserved: Readonly<
  Record<NonNullable<PositiveClass['observed']>, (alloy: ObservedAlloy) => boolean | null>
> = {
  'one solution': ({ singlePhase }) => singlePhase,
  'fcc of one solution': ({ singlePhase, phaseClass }) => (singlePhase ? phaseClass === 'fcc' : null),
  'bcc of one solution': ({ singlePhase, phaseClass }) => (singlePhase ? phaseClass === 'bcc' : null),
  'Laves phase': ({ phases }) => phases?.split('+').includes('Laves') ?? null,
};

/** How often a criterion was right on its cases. */
export function measured(cases: readonly Case[]): Measured {
  const counts = countsOf(cases);
  const bySystem = [...Map.groupBy(cases, ({ system }) => system)];
  // Whole systems are drawn, so that each need be counted only once.
  const ofSystem = bySystem.map(([, its]) => countsOf(its));
  return {
    n: cases.length,
    ...counts,
    balancedAccuracy: balancedAccuracy(counts),
    interval: resampledInterval(
      bySystem.map(([system]) => system),
      (drawn) => balancedAccuracy(sumOf(drawn.map((place) => ofSystem[place]!))),
    ),
  };
}

/** How many verdicts were true and false positives and negatives. */
type Counts = Pick<Measured, 'tp' | 'fp' | 'fn' | 'tn'>;

function countsOf(cases: readonly Case[]): Counts {
  const counts = { tp: 0, fp: 0, fn: 0, tn: 0 };
  for (const { verdict, positive } of cases) {
    counts[verdict ? (positive ? 'tp' : 'fp') : positive ? 'fn' : 'tn'] += 1;
  }
  return counts;
}

function sumOf(counts: readonly Counts[]): Counts {
  const sum = { tp: 0, fp: 0, fn: 0, tn: 0 };
  for (const { tp, fp, fn, tn } of counts) {
    sum.tp += tp;
    sum.fp += fp;
    sum.fn += fn;
    sum.tn += tn;
  }
  return sum;
}

/** NaN without a positive or without a negative. */
function balancedAccuracy({ tp, fp, fn, tn }: Counts): number {
  return (tp / (tp + fn) + tn / (tn + fp)) / 2;
}
