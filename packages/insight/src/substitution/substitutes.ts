import type { Facts, Limit } from '@tiegel/contract';
import {
  type Fault,
  fault,
  meetsLimit,
  outsideSpace,
  ProblemError,
  type SearchSpace,
} from '@tiegel/contract/terms';
import { formatComposition, missingIn, symbolFault } from '@tiegel/elements';
import {
  quantities as allQuantities,
  type Composition,
  columnsOf,
  missingFor,
  type QuantityValues,
  quantityById,
  screening,
} from '@tiegel/screening';
import { type Demixing, demixing } from '../regularSolution/demixing.ts';
import { typicalSpread } from './typicalSpread.ts';
import { type Variant, variant } from './variants.ts';

/** What to replace, by what, and what to ask of the result. */
export interface Substitution<Phase> {
  /** An element of the alloy. */
  replace: string;
  /** Partners, each tried alone and, where there are two or more, all together in equal parts. Every other element of the facts with complete data by default. */
  with?: readonly string[];
  /** Shares of the element's amount that are replaced; all of it and half of it by default. */
  shares?: readonly number[];
  /** Of every element that may take part. */
  facts: Facts;
  /** ids; all by default */
  quantities?: readonly string[];
  conditions?: Readonly<Record<string, number>>;
  /** Alloys that keep all of them come first. */
  limits?: readonly Limit[];
  /** What a search looks at: alloys outside come behind, with what they break. */
  space?: SearchSpace;
  /** How to order; by likeness to the alloy (see Substitute.score) by default. */
  rank?: { score: (values: QuantityValues) => number | null; better: 'high' | 'low' };
  /** A phase estimate, to stand beside every result. */
  phase?: (composition: Composition) => Phase;
}

/** One alloy that comes of a replacement. Amounts in at.%, values in the units of the quantities. */
export interface Substitute<Phase> extends Variant {
  quantities: QuantityValues;
  /** Value minus that of the alloy; null where either has none. */
  changes: Record<string, number | null>;
  /** null where no estimate was asked for */
  phase: Phase | null;
  demixing: Demixing | null;
  /** currency of the price list per kg */
  cost: number | null;
  /** In the order of the limits: kept, not kept, or without a value. */
  limits: (boolean | null)[];
  /** What of the space that was asked for it breaks, in words; empty where nothing is. */
  outsideSpace: string[];
  /** As the ranking says; by default unlikeness, 0 to 1: the mean over the quantities of the change in units of the typical spread among published alloys (typicalSpread), each held at 3 and divided by 3. What prices decide takes no part. */
  score: number | null;
}

/** Holds for every table of substitutes. */
export const substitutesTrust =
  'Every number is of a random solution of the new composition; nothing here knows whether it forms one. ' +
  'Likeness is a measure of the numbers, not of the metal.';

/**
 * Replaces an element of an alloy by every partner and share, the best first: those that keep all
 * limits and lie in the space before those that keep the limits alone, and these before the others,
 * then by score, then by composition.
 *
 * @param alloy at.%, 100 in sum
 * @throws ProblemError substitute/absent (the alloy does not hold the element), substitute/itself,
 *   element/unknown, element/no-data, quantity/unknown
 * @throws RangeError for an element of the alloy that the facts lack
 */
export function substitutes<Phase = never>(
  alloy: Composition,
  request: Substitution<Phase>,
): Substitute<Phase>[] {
  refuseWrong(alloy, request);
  const {
    facts,
    conditions,
    limits = [],
    space,
    rank,
    quantities = allQuantities.map(({ id }) => id),
  } = request;
  const needed = [...new Set([...quantities, ...limits.map(({ quantity }) => quantity), 'cost'])];
  const valuesAt = screening(facts, needed, conditions);
  const before = valuesAt(alloy);
  const shown = (values: QuantityValues): QuantityValues =>
    Object.fromEntries(quantities.map((id) => [id, values[id]!]));
  const unlikeness = rank ? null : unlikenessOf(quantities, conditions);
  const items = variantsOf(alloy, request, quantities).map((one): Substitute<Phase> => {
    const values = valuesAt(one.composition);
    const changes = changesOf(quantities, before, values);
    return {
      ...one,
      quantities: shown(values),
      changes,
      phase: request.phase?.(one.composition) ?? null,
      demixing: demixing(one.composition, facts),
      cost: values.cost!,
      limits: limits.map((limit) => meetsLimit(values[limit.quantity]!, limit)),
      outsideSpace: space ? outsideSpace(one.composition, space) : [],
      score: rank ? rank.score(values) : unlikeness!(changes, before),
    };
  });
  return inOrder(items, rank?.better ?? 'low');
}

function refuseWrong(alloy: Composition, { replace, with: partners }: Substitution<unknown>): void {
  const faults: Fault[] = [];
  const unknown = symbolFault(replace, '/replace');
  if (unknown !== null) faults.push(unknown);
  else if (!((alloy[replace] ?? 0) > 0)) {
    faults.push(fault('substitute/absent', { symbol: replace, alloy: formatComposition(alloy) }, '/replace'));
  }
  for (const [at, symbol] of (partners ?? []).entries()) {
    const pointer = `/with/${at}`;
    const wrong = symbolFault(symbol, pointer);
    if (wrong !== null) faults.push(wrong);
    else if (symbol === replace) faults.push(fault('substitute/itself', { symbol }, pointer));
  }
  if (faults.length > 0) throw new ProblemError(faults);
}

function variantsOf(
  alloy: Composition,
  request: Substitution<unknown>,
  quantities: readonly string[],
): Variant[] {
  const { replace, shares = [1, 0.5] } = request;
  // One that is named twice is one: 'all together' would else give it a part for each time.
  const partners = request.with && [...new Set(request.with)];
  const alone = (partners ?? completePartners(alloy, request, quantities)).map((symbol) => [symbol]);
  const sets = partners && partners.length > 1 ? [...alone, [...partners]] : alone;
  return sets.flatMap((set) => shares.map((share) => variant(alloy, replace, share, set)));
}

/** The elements that lack nothing which the alloy itself has. */
function completePartners(
  alloy: Composition,
  { replace, facts }: Substitution<unknown>,
  quantities: readonly string[],
): string[] {
  const known = quantities.filter((id) => missingFor(id, alloy, facts).length === 0);
  const read = known.map((id) => columnsOf(quantityById(id)));
  const columns = [...new Set(read.flatMap(({ elements, pairs }) => [...elements, ...pairs]))];
  return facts.symbols.filter(
    (symbol) =>
      symbol !== replace &&
      columns.every((column) => missingIn(facts, column, [...Object.keys(alloy), symbol]).length === 0),
  );
}

function changesOf(
  ids: readonly string[],
  before: QuantityValues,
  after: QuantityValues,
): Record<string, number | null> {
  const change = (id: string): number | null => {
    const [from, to] = [before[id]!, after[id]!];
    return from === null || to === null ? null : to - from;
  };
  return Object.fromEntries(ids.map((id) => [id, change(id)]));
}

const MOST_SPREADS = 3;

/** A change that lacks a value counts as the largest; a quantity that the alloy itself lacks does not count. */
function unlikenessOf(
  ids: readonly string[],
  conditions: Readonly<Record<string, number>> | undefined,
): (changes: Record<string, number | null>, before: QuantityValues) => number | null {
  const priceless = ids.filter((id) => !columnsOf(quantityById(id)).elements.includes('price'));
  const spread = typicalSpread(priceless, conditions);
  return (changes, before) => {
    const counted = priceless.filter((id) => spread[id] !== null && before[id] !== null);
    if (counted.length === 0) return null;
    const parts = counted.map((id) => {
      const change = changes[id] ?? Number.POSITIVE_INFINITY;
      return Math.min(MOST_SPREADS, Math.abs(change) / spread[id]!) / MOST_SPREADS;
    });
    return parts.reduce((sum, part) => sum + part, 0) / parts.length;
  };
}

function inOrder<Phase>(items: Substitute<Phase>[], better: 'high' | 'low'): Substitute<Phase>[] {
  const sign = better === 'low' ? 1 : -1;
  const key = ({ score }: Substitute<Phase>) => (score === null ? Number.POSITIVE_INFINITY : sign * score);
  return items
    .map((item) => ({
      item,
      class: classOf(item),
      key: key(item),
      text: formatComposition(item.composition),
    }))
    .sort((a, b) => a.class - b.class || compared(a.key, b.key) || (a.text < b.text ? -1 : 1))
    .map(({ item }) => item);
}

/** 0: all is kept, 1: the limits alone, 2: not even these. */
function classOf({ limits, outsideSpace: broken }: Substitute<unknown>): number {
  if (!limits.every(Boolean)) return 2;
  return broken.length === 0 ? 0 : 1;
}

const compared = (a: number, b: number): number => (a === b ? 0 : a - b);
