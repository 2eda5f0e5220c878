import { quantities } from '@tiegel/screening';
import type { Pick } from './pick.ts';

/** The size that values of a quantity have about: a number by which its share is a plain one of order 1. */
export type Scale = (quantity: string) => number;

/**
 * A figure of merit of one's own, as typed: quantities without unit, combined by every operator and function,
 * also where these have no value or are infinite: powers of what may be negative, ln 0, 1/0, and what is made of
 * them; where differences cancel; and where numbers leave what a double holds on the way.
 *
 * @param own quantities of one's own, plain numbers, that it names as often as all others together
 */
export function randomFormula(pick: Pick, scaleOf: Scale, own: readonly string[] = []): string {
  const leaf = () => {
    if (own.length > 0 && pick.chance(0.5)) return pick.one(own);
    const { id } = pick.one(quantities);
    // As large as it is, now and then: a plain factor leaves it open which unit a number has.
    return pick.chance(0.1) ? `1*${id}` : `${id}/${scaleOf(id)}`;
  };
  const exponents = [
    '2',
    '2',
    '0',
    '3',
    '5',
    '6',
    '(-1)',
    '(-2)',
    '(-3)',
    '0.5',
    '1.5',
    '(-0.5)',
    '40',
    '300',
    '1',
    '4',
    '7',
    '(-4)',
    '(1/3)',
    '(-0.001)',
    '1000',
  ];
  const inner = (depth: number): string => (depth === 0 || pick.chance(0.25) ? leaf() : formula(depth - 1));
  const formula = (depth: number): string => {
    const [one, other] = [inner(depth), inner(depth)];
    const weight = Number(pick.between(0.2, 3).toPrecision(2));
    const third = inner(depth);
    const far = pick.one(['1e100', '1e-100', '1e200', '1e-200', '1e300', '1e-300', '0', '(-1)']);
    return pick.one([
      `(${one} + ${weight}*${other})`,
      `(${one} - ${weight}*${other})`,
      `(${one} - ${one})`,
      `((${one} + ${weight}) - (${one}))`,
      `${weight}/(${one} - ${other})`,
      `(${one})*(${other})`,
      `(${one})/(0.5 + abs(${other}))`,
      `(${one})/(${other})`,
      `min(${one}, ${weight}, ${other})`,
      `max(${one}, ${other})`,
      `min(max(${one}, ${other}), ${weight})`,
      `max(0, ${one} - ${weight})`,
      `abs(${one} - ${weight})`,
      `sqrt(abs(${one}))`,
      `exp(-abs(${one}))`,
      `ln(0.1 + abs(${one}))`,
      `(${one})^${pick.one(exponents)}`,
      `ln(${one})`,
      `sqrt(${one} - ${weight})`,
      `exp(${one})`,
      `exp(${pick.one(['100', '-100', '700', '-700', '1000'])}*(${one}))`,
      `${weight}/(${one})`,
      `min(${weight}, ${one})`,
      `(${one})*${far}`,
      `(${one})/${far === '0' ? '1e250' : far}`,
      `(0.01 + abs(${one}))^${pick.one(['0.5', '1.5', '(-1)', '3', '(-2.5)', '0.001', '100'])}`,
      `1/(1 + exp(-(${weight} + ${one} - ${other})))`,
      `-(${one})`,
      `-(${one})^${pick.one(exponents)}`,
      `(-(${one}))^${pick.one(exponents)}`,
      `(${one} - ${weight})*(${other} - ${weight})`,
      `(${one} - ${weight})^2/(${other})`,
      `(${one})*(${other})*(${third})`,
      `(${one})/((${other})*(${third}))`,
      `(${one})/((${other})/(${third}))`,
      `min(${one}, ${other}, ${third}, -(${one}))`,
      `max(${weight}, ${one} - ${other}, min(${third}, 0))`,
      `max(${one}, ${other})/min(${one}, ${other})`,
      `abs(${one} - ${weight}) - abs(${other} - ${weight})`,
      `sqrt(${one})/sqrt(${other})`,
      `sqrt(${one})/(${other})`,
      `sqrt(${one})*sqrt(${other}) - ${weight}*(${third})`,
      `exp(${one})/(exp(${one}) + exp(${other}) + ${weight})`,
      `ln(${one}) - ln(${other})`,
      `ln(exp(${one}))`,
      `exp(${weight}*ln(${one}))`,
      `1/(1/(${one}) - 1/(${other}))`,
      `(${one})^${pick.one(exponents)}/(${other})^${pick.one(exponents)}`,
    ]);
  };
  return formula(pick.whole(1, 3));
}
