import type { Step } from '@tiegel/screening';
import type { OperatorStep } from '../../blocks/steps.ts';
import {
  type Affine,
  always,
  combine,
  copyStep,
  isFinitePair,
  LARGE,
  middleOf,
  never,
  setFlat,
  settle,
  sometimes,
} from './affine.ts';
import { curvedBound } from './curvedBound.ts';
import { exponential, logarithm, powerOf, root, size, square } from './curves.ts';

type Bound = () => void;
type StepOf<Kind extends Step['kind']> = Extract<Step, { kind: Kind }>;

/** Bounds an operator from the bounds of the steps that it reads. */
export function operatorBound(affine: Affine, to: number, step: OperatorStep): Bound {
  switch (step.kind) {
    case 'add':
      return addBound(affine, to, step.left, step.right, 1);
    case 'subtract':
      return addBound(affine, to, step.left, step.right, -1);
    case 'multiply':
      return step.left === step.right
        ? curvedBound(affine, to, step.left, square)
        : productBound(affine, to, step.left, step.right);
    case 'divide':
      return quotientBound(affine, to, step.left, step.right);
    case 'lesser':
      return extremeBound(affine, to, step.left, step.right, -1);
    case 'greater':
      return extremeBound(affine, to, step.left, step.right, 1);
    case 'negate':
      return () => scale(affine, to, step.of, -1, 0);
    case 'absolute':
      return absoluteBound(affine, to, step.of);
    case 'squareRoot':
      return curvedBound(affine, to, step.of, root);
    case 'exponential':
      return curvedBound(affine, to, step.of, exponential);
    case 'logarithm':
      return curvedBound(affine, to, step.of, logarithm);
    case 'power':
      return curvedBound(affine, to, step.of, powerOf(step.exponent));
    case 'choose':
      return choiceBound(affine, to, step);
  }
}

/** Whether all that two steps make is a multiple of the second; 0 · ∞ has no value. */
function isFactorOf({ low, high, missing }: Affine, step: number, of: number): boolean {
  const factor = low[step]!;
  if (factor !== high[step] || missing[step] !== never || !Number.isFinite(factor)) return false;
  return factor !== 0 || isFinitePair(low[of]!, high[of]!);
}

/** factor · (step of), its ends rounded as the evaluator rounds. */
function scale(affine: Affine, to: number, of: number, factor: number, missing: number): void {
  const [one, other] = [factor * affine.low[of]!, factor * affine.high[of]!];
  const lacks = Math.max(missing, affine.missing[of]!);
  if (lacks === always || !(Math.abs(one) + Math.abs(other) < Number.POSITIVE_INFINITY)) {
    setFlat(affine, to, Math.min(one, other), Math.max(one, other), lacks);
    return;
  }
  combine(affine, true, to, 0, factor, of, 0, of);
  combine(affine, false, to, 0, factor, of, 0, of);
  settle(affine, to, Math.min(one, other), Math.max(one, other), lacks);
}

/** Whether two steps have finite ends; if not, only their intervals say something. */
function bothFinite({ low, high }: Affine, a: number, b: number): boolean {
  return isFinitePair(low[a]!, high[a]!) && isFinitePair(low[b]!, high[b]!);
}

function addBound(affine: Affine, to: number, a: number, b: number, sign: 1 | -1): Bound {
  const { low, high, missing } = affine;
  return () => {
    let lacks = Math.max(missing[a]!, missing[b]!);
    const [otherLow, otherHigh] = sign === 1 ? [low[b]!, high[b]!] : [-high[b]!, -low[b]!];
    const from = low[a]! + otherLow;
    const until = high[a]! + otherHigh;
    if (lacks === always) {
      setFlat(affine, to, 0, 0, always);
    } else if (bothFinite(affine, a, b)) {
      combine(affine, true, to, 0, 1, a, sign, b);
      combine(affine, false, to, 0, 1, a, sign, b);
      settle(affine, to, from, until, lacks);
    } else {
      // ∞ − ∞ has no value; the rest may be anything.
      if (Number.isNaN(low[a]! + otherHigh) || Number.isNaN(high[a]! + otherLow)) lacks = sometimes;
      setFlat(affine, to, orElse(from, -Infinity), orElse(until, Infinity), Math.max(lacks, missing[a]!));
    }
  };
}

const orElse = (value: number, other: number) => (Number.isNaN(value) ? other : value);

/** The four products of ends decide; in between, the envelope of a product over a rectangle (McCormick). */
function productBound(affine: Affine, to: number, a: number, b: number): Bound {
  const { low, high, missing } = affine;
  return () => {
    if (isFactorOf(affine, a, b)) return scale(affine, to, b, low[a]!, missing[b]!);
    if (isFactorOf(affine, b, a)) return scale(affine, to, a, low[b]!, missing[a]!);
    const [al, ah, bl, bh] = [low[a]!, high[a]!, low[b]!, high[b]!];
    const lacks = Math.max(missing[a]!, missing[b]!);
    if (lacks === always) return setFlat(affine, to, 0, 0, always);
    if (!bothFinite(affine, a, b)) {
      const ends = [al * bl, al * bh, ah * bl, ah * bh].map((value) => orElse(value, 0));
      const undefinedProduct =
        [al * bl, al * bh, ah * bl, ah * bh].some(Number.isNaN) ||
        (al <= 0 && ah >= 0) ||
        (bl <= 0 && bh >= 0);
      return setFlat(affine, to, Math.min(...ends), Math.max(...ends), undefinedProduct ? sometimes : lacks);
    }
    const one = al * bl;
    const two = al * bh;
    const three = ah * bl;
    const four = ah * bh;
    const firstBelow =
      middleOf(affine, true, -one, bl, a, al, b) >= middleOf(affine, true, -four, bh, a, ah, b);
    if (firstBelow) combine(affine, true, to, -one, bl, a, al, b);
    else combine(affine, true, to, -four, bh, a, ah, b);
    const firstAbove =
      middleOf(affine, false, -two, bh, a, al, b) <= middleOf(affine, false, -three, bl, a, ah, b);
    if (firstAbove) combine(affine, false, to, -two, bh, a, al, b);
    else combine(affine, false, to, -three, bl, a, ah, b);
    settle(affine, to, Math.min(one, two, three, four), Math.max(one, two, three, four), lacks);
  };
}

const ROUNDS = 3;
/** Another round is worth it when the ends came nearer by this share. */
const WORTH = 0.98;

/**
 * A quotient f = a/b of a divisor that keeps its sign. From (f − p)(b − q) having a known sign,
 * p an end of f and q one of b, follows a bound of f that is affine in a and b. Narrower ends give
 * better bounds, so it goes in rounds, as Dinkelbach's iteration does.
 */
function quotientBound(affine: Affine, to: number, a: number, b: number): Bound {
  const { low, high, missing } = affine;
  return () => {
    const [al, ah, bl, bh] = [low[a]!, high[a]!, low[b]!, high[b]!];
    const lacks = Math.max(missing[a]!, missing[b]!);
    if (lacks === always) return setFlat(affine, to, 0, 0, always);
    if (!bothFinite(affine, a, b) || !(bl > 0 || bh < 0)) return quotientWithZero(affine, to, a, b);
    const four = [al / bl, al / bh, ah / bl, ah / bh] as const;
    let from = Math.min(...four);
    let until = Math.max(...four);
    // With b < 0, f = −a/−b.
    const sign = bl > 0 ? 1 : -1;
    const [near, far] = sign === 1 ? [bl, bh] : [-bh, -bl];
    if (!(far < LARGE)) return setFlat(affine, to, from, until, lacks);
    for (let round = 0; round < ROUNDS; round += 1) {
      const width = until - from;
      const left = sign / far;
      const right = sign / near;
      if (
        middleOf(affine, true, from, left, a, -from * left, b) >=
        middleOf(affine, true, until, right, a, -until * right, b)
      )
        combine(affine, true, to, from, left, a, -from * left, b);
      else combine(affine, true, to, until, right, a, -until * right, b);
      if (
        middleOf(affine, false, from, right, a, -from * right, b) <=
        middleOf(affine, false, until, left, a, -until * left, b)
      )
        combine(affine, false, to, from, right, a, -from * right, b);
      else combine(affine, false, to, until, left, a, -until * left, b);
      settle(affine, to, from, until, lacks);
      from = affine.low[to]!;
      until = affine.high[to]!;
      if (!(until - from < WORTH * width)) return;
    }
  };
}

/** The divisor may be 0, or something is infinite: ends alone, and from one side, where the divisor is never below 0, what is affine. */
function quotientWithZero(affine: Affine, to: number, a: number, b: number): void {
  const { low, high, missing } = affine;
  const [al, ah, bl, bh] = [low[a]!, high[a]!, low[b]!, high[b]!];
  const lacks = Math.max(missing[a]!, missing[b]!, sometimes);
  const nonNegative = bl >= 0 && bh < LARGE && bh > 0 && al >= 0 && ah < Infinity;
  if (!nonNegative) {
    const known = bl > 0 || bh < 0;
    const ends = known
      ? [al / bl, al / bh, ah / bl, ah / bh].map((value) => orElse(value, 0))
      : [-Infinity, Infinity];
    setFlat(affine, to, Math.min(...ends), Math.max(...ends), lacks);
    return;
  }
  const from = al / bh;
  combine(affine, true, to, from, 1 / bh, a, -from / bh, b);
  affine.above.constants[to] = Infinity;
  affine.above.atMiddle[to] = Infinity;
  settle(affine, to, from, Infinity, lacks);
}

/** The greater (sign 1) or the lesser of two. */
function extremeBound(affine: Affine, to: number, a: number, b: number, sign: 1 | -1): Bound {
  const { low, high, missing, below, above } = affine;
  return () => {
    const lacks = Math.max(missing[a]!, missing[b]!);
    if (lacks === always) return setFlat(affine, to, 0, 0, always);
    const [al, ah, bl, bh] = [low[a]!, high[a]!, low[b]!, high[b]!];
    if (sign === 1 ? al >= bh : ah <= bl) return copyStep(affine, to, a, lacks);
    if (sign === 1 ? bl >= ah : bh <= al) return copyStep(affine, to, b, lacks);
    const pick = sign === 1 ? Math.max : Math.min;
    const [from, until] = [pick(al, bl), pick(ah, bh)];
    const inner = sign === 1 ? below : above;
    const better =
      sign === 1 ? inner.atMiddle[a]! >= inner.atMiddle[b]! : inner.atMiddle[a]! <= inner.atMiddle[b]!;
    combine(affine, sign === 1, to, 0, 1, better ? a : b, 0, a);
    if (bothFinite(affine, a, b)) {
      // max(u, v) = v + max(u − v, 0), and the chord of max(d, 0) lies above it.
      const [least, greatest] = sign === 1 ? [al - bh, ah - bl] : [bl - ah, bh - al];
      const share = greatest / (greatest - least);
      // Not 1 − share: next to 1 that is off by more, of its size, than sums are eased by.
      const shareOfOther = -least / (greatest - least);
      combine(affine, sign !== 1, to, -sign * share * least, share, a, shareOfOther, b);
    } else {
      const outer = sign === 1 ? above : below;
      outer.constants[to] = sign * Infinity;
      outer.atMiddle[to] = sign * Infinity;
    }
    settle(affine, to, from, until, lacks);
  };
}

function absoluteBound(affine: Affine, to: number, of: number): Bound {
  const { low, high, missing } = affine;
  const chordAndSlope = curvedBound(affine, to, of, size);
  return () => {
    if (missing[of] !== always && low[of]! >= 0) return copyStep(affine, to, of, missing[of]!);
    if (missing[of] !== always && high[of]! <= 0) return scale(affine, to, of, -1, missing[of]!);
    chordAndSlope();
  };
}

/** Decided where the comparison is; else anything that either side may be. */
function choiceBound(
  affine: Affine,
  to: number,
  { left, operator, right, then, otherwise }: StepOf<'choose'>,
): Bound {
  const { low, high, missing } = affine;
  return () => {
    const compared = Math.max(missing[left]!, missing[right]!);
    if (compared === always) return setFlat(affine, to, 0, 0, always);
    const strict = operator === '<';
    const surely = strict ? high[left]! < low[right]! : high[left]! <= low[right]!;
    const not = strict ? low[left]! >= high[right]! : low[left]! > high[right]!;
    if (surely) return takeSide(affine, to, then, compared);
    if (not)
      return otherwise === null
        ? setFlat(affine, to, 0, 0, always)
        : takeSide(affine, to, otherwise, compared);
    if (otherwise === null || missing[otherwise] === always) return takeSide(affine, to, then, sometimes);
    if (missing[then] === always) return takeSide(affine, to, otherwise, sometimes);
    setFlat(
      affine,
      to,
      Math.min(low[then]!, low[otherwise]!),
      Math.max(high[then]!, high[otherwise]!),
      Math.max(compared, missing[then]!, missing[otherwise]!),
    );
  };
}

/** The value of one side, which may lack where the side or the comparison does. */
function takeSide(affine: Affine, to: number, side: number, compared: number): void {
  copyStep(affine, to, side, Math.max(compared, affine.missing[side]!));
}
