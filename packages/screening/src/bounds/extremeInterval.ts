import type { Step } from '../binding/program.ts';
import { eitherMissing, type Interval, type Missing, setInterval } from './interval.ts';
import type { Box } from './region.ts';

/**
 * The interval of the least or greatest value among the elements present. The least value is at
 * most that of every required element, and where k optional elements must be present at most the
 * k-th greatest of theirs; it may be as low as any element that can be present.
 */
export function extremeInterval({
  kind,
  coefficients,
}: Extract<Step, { kind: 'least' | 'greatest' }>): (box: Box, into: Interval) => void {
  const sign = kind === 'least' ? 1 : -1;
  return (box, into) => {
    const required: number[] = [];
    const optional: number[] = [];
    let missing: Missing = 'never';
    for (let at = 0; at < box.index.length; at++) {
      const value = sign * coefficients[box.index[at]!]!;
      if (!box.optional[at] && Number.isNaN(value)) missing = 'always';
      if (box.optional[at] && box.mostOptional < 1) continue;
      if (Number.isNaN(value)) missing = eitherMissing(missing, 'sometimes');
      else (box.optional[at] ? optional : required).push(value);
    }
    optional.sort((a, b) => b - a);
    if (box.fewestOptional > optional.length) missing = 'always';
    const forced = box.fewestOptional > 0 ? optional[box.fewestOptional - 1]! : Number.POSITIVE_INFINITY;
    const most = Math.min(...required, required.length + box.fewestOptional > 0 ? forced : optional[0]!);
    const least = Math.min(...required, ...optional);
    setSigned(into, sign, least, most, missing);
  };
}

/** The interval of the least or greatest value among the pairs present; fewer than two elements have none. */
export function pairExtremeInterval({
  kind,
  coefficients,
}: Extract<Step, { kind: 'leastPair' | 'greatestPair' }>): (box: Box, into: Interval) => void {
  const size = Math.sqrt(coefficients.length);
  const sign = kind === 'leastPair' ? 1 : -1;
  return (box, into) => {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    let certain = Number.POSITIVE_INFINITY;
    let missing: Missing = box.required + box.fewestOptional < 2 ? 'sometimes' : 'never';
    for (let i = 1; i < box.index.length; i++) {
      for (let j = 0; j < i; j++) {
        const optional = Number(box.optional[i]!) + Number(box.optional[j]!);
        if (optional > box.mostOptional) continue;
        const value = sign * coefficients[box.index[i]! * size + box.index[j]!]!;
        if (Number.isNaN(value)) {
          missing = optional === 0 ? 'always' : eitherMissing(missing, 'sometimes');
          continue;
        }
        least = Math.min(least, value);
        most = Math.max(most, value);
        if (optional === 0) certain = Math.min(certain, value);
      }
    }
    setSigned(into, sign, least, Math.min(most, certain), missing);
  };
}

/** The greatest of some numbers is minus the least of their negatives. */
function setSigned(into: Interval, sign: number, low: number, high: number, missing: Missing): void {
  if (sign > 0) setInterval(into, low, high, missing);
  else setInterval(into, -high, -low, missing);
}
