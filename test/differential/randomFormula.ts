import { quantities } from '@tiegel/screening';
import type { Pick } from './pick.ts';

/** The size that values of a quantity have about: a number by which its share is a plain one of order 1. */
export type Scale = (quantity: string) => number;

/**
 * A figure of merit of one's own, as typed: quantities without unit, combined by every operator and function,
 * also where these have no value or are infinite: powers of what may be negative, ln 0, 1/0, and what is made of them.
 */
export function randomFormula(pick: Pick, scaleOf: Scale): string {
  const leaf = () => {
    const { id } = pick.one(quantities);
    return `${id}/${scaleOf(id)}`;
  };
  const inner = (depth: number): string => (depth === 0 || pick.chance(0.25) ? leaf() : formula(depth - 1));
  const formula = (depth: number): string => {
    const [one, other] = [inner(depth), inner(depth)];
    const weight = Number(pick.between(0.2, 3).toPrecision(2));
    return pick.one([
      `(${one} + ${weight}*${other})`,
      `(${one} - ${weight}*${other})`,
      `(${one})*(${other})`,
      `(${one})/(0.5 + abs(${other}))`,
      `(${one})/(${other})`,
      `min(${one}, ${weight}, ${other})`,
      `max(${one}, ${other})`,
      `abs(${one} - ${weight})`,
      `sqrt(abs(${one}))`,
      `exp(-abs(${one}))`,
      `ln(0.1 + abs(${one}))`,
      `(${one})^${pick.one(['2', '2', '0', '3', '5', '6', '(-1)', '(-2)', '(-3)', '0.5', '1.5'])}`,
      `ln(${one})`,
      `sqrt(${one} - ${weight})`,
      `exp(${one})`,
      `${weight}/(${one})`,
      `min(${weight}, ${one})`,
      `(0.01 + abs(${one}))^${pick.one(['0.5', '1.5', '(-1)', '3'])}`,
      `1/(1 + exp(-(${weight} + ${one} - ${other})))`,
    ]);
  };
  return formula(pick.whole(1, 3));
}
