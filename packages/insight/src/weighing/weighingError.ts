import type { Facts, Limit } from '@tiegel/contract';
import { meetsLimit } from '@tiegel/contract/terms';
import { type Composition, type QuantityValues, screening } from '@tiegel/screening';
import { atOnce } from '../atOnce.ts';
import { weighingCorners } from './weighingCorners.ts';

/** A number and what weighing can make of it. null: no value, for want of data or outside a domain. */
export interface WeighedValue {
  value: number | null;
  least: number | null;
  greatest: number | null;
  /** True where some outcome has no value though others have one. */
  mayLack: boolean;
}

/** What a limit or a criterion says of the alloy, and whether weighing alone can turn it. */
export interface WeighedVerdict {
  passes: boolean | null;
  canFlip: boolean;
}

/** What the resolution of a balance leaves certain of an alloy. */
export interface WeighingError {
  /** g, what each element should weigh */
  masses: Record<string, number>;
  /** at.% of each element */
  shares: Record<string, { value: number; least: number; greatest: number }>;
  /** By id of the quantity, in its unit. */
  quantities: Record<string, WeighedValue>;
  /** In the order of the limits given. */
  limits: (WeighedVerdict & { limit: Limit })[];
  /** By name, as the verdicts given. */
  verdicts: Record<string, WeighedVerdict>;
  trust: string;
}

/** What to weigh, on what, and what to ask of it. */
export interface Weighing {
  /** of the batch, g */
  mass: number;
  /** one step of the balance, g */
  resolution: number;
  facts: Facts;
  /** ids of quantities; all by default */
  quantities?: readonly string[];
  /** by name, in the units of the conditions of packages/screening */
  conditions?: Readonly<Record<string, number>>;
  limits?: readonly Limit[];
  /** Criteria, or anything else that says yes, no or nothing (null) of a composition. */
  verdicts?: Readonly<Record<string, (composition: Composition) => boolean | null>>;
}

/** Holds for every weighing error. */
export const weighingTrust =
  'Weighing alone, each mass off by at most one step of the balance; impurities, losses in melting and ' +
  'segregation come on top and are usually larger.';

/**
 * The interval of every quantity, and whether a limit or a criterion can flip, when each mass is
 * off by at most one step of the balance (weighingCorners).
 *
 * Values are taken at the alloy itself and at all corners of the box of masses. That is exact for
 * whatever rises or falls with each mass throughout the box; where a quantity has its extreme
 * inside the box, the interval is short by the square of the relative error, some 1e-8 of the value
 * for a hundred grams on a balance that shows 0.01 g.
 *
 * @throws RangeError as weighingCorners does, and for an element that the facts lack
 * @throws ProblemError quantity/unknown
 */
export function weighingError(composition: Composition, weighing: Weighing): WeighingError {
  return atOnce(weighingSteps(composition, weighing));
}

/** The same in steps of a composition each, some milliseconds: twelve elements take seconds, and others can be answered in between. */
export function* weighingSteps(
  composition: Composition,
  weighing: Weighing,
): Generator<undefined, WeighingError> {
  const { mass, resolution, facts, quantities, conditions, limits = [], verdicts = {} } = weighing;
  const { masses, corners } = weighingCorners(composition, mass, resolution);
  const valuesAt = screening(facts, quantities, conditions);
  const here = valuesAt(composition);
  const around: QuantityValues[] = [];
  for (const corner of corners) {
    around.push(valuesAt(corner));
    yield;
  }
  const total = Object.values(composition).reduce((sum, amount) => sum + amount, 0);
  const limited = screening(
    facts,
    limits.map(({ quantity }) => quantity),
    conditions,
  );
  const ofLimits: WeighingError['limits'] = [];
  for (const limit of limits) {
    const meets = (at: Composition) => meetsLimit(limited(at)[limit.quantity]!, limit);
    ofLimits.push({ limit, ...(yield* weighedVerdict(composition, corners, meets)) });
  }
  const ofVerdicts: WeighingError['verdicts'] = {};
  for (const [name, of] of Object.entries(verdicts)) {
    ofVerdicts[name] = yield* weighedVerdict(composition, corners, of);
  }
  return {
    masses,
    shares: Object.fromEntries(
      Object.keys(masses).map((symbol) => {
        const shares = corners.map((corner) => corner[symbol] ?? 0);
        const value = (100 * composition[symbol]!) / total;
        return [symbol, { value, least: Math.min(...shares), greatest: Math.max(...shares) }];
      }),
    ),
    quantities: Object.fromEntries(Object.keys(here).map((id) => [id, weighedValue(id, here, around)])),
    limits: ofLimits,
    verdicts: ofVerdicts,
    trust: weighingTrust,
  };
}

function weighedValue(id: string, here: QuantityValues, around: readonly QuantityValues[]): WeighedValue {
  const all = [here, ...around].map((values) => values[id]!);
  const known = all.filter((value) => value !== null);
  if (known.length === 0) return { value: null, least: null, greatest: null, mayLack: false };
  return {
    value: here[id]!,
    least: Math.min(...known),
    greatest: Math.max(...known),
    mayLack: known.length < all.length,
  };
}

function* weighedVerdict(
  composition: Composition,
  corners: readonly Composition[],
  of: (composition: Composition) => boolean | null,
): Generator<undefined, WeighedVerdict> {
  const passes = of(composition);
  for (const corner of corners) {
    if (of(corner) !== passes) return { passes, canFlip: true };
    yield;
  }
  return { passes, canFlip: false };
}
