import type { RankEntry } from '@tiegel/contract';
import {
  absolute,
  atMost,
  divide,
  type Expression,
  greater,
  lesser,
  minus,
  power,
  type QuantityFinder,
  times,
  within,
} from '@tiegel/screening';

/**
 * The ranking as one expression. A single entry: the value, or its distance to the target.
 * Several: the weighted geometric mean Π dᵢ^(wᵢ/Σw) of their desirabilities.
 * @throws ProblemError quantity/unknown
 * @source Derringer & Suich, J. Qual. Technol. 12 (1980) 214 (equations from memory)
 */
export function scoreExpression(rank: readonly RankEntry[], quantityOf: QuantityFinder): Expression {
  const [first, ...others] = rank;
  if (!first) throw new RangeError('A ranking needs an entry.');
  if (others.length === 0) return valueToRank(first, quantityOf);
  const weights = rank.reduce((sum, { weight = 1 }) => sum + weight, 0);
  return rank
    .map((entry) => power(desirability(entry, quantityOf), (entry.weight ?? 1) / weights))
    .reduce((product, factor) => times(product, factor));
}

function valueToRank({ quantity, prefer }: RankEntry, quantityOf: QuantityFinder): Expression {
  const value = quantityOf(quantity).formula;
  return typeof prefer === 'string' ? value : absolute(minus(value, prefer.target));
}

/**
 * From 0, undesirable, to 1, fully desirable: ((y − from)/(to − from))^shape held between the
 * two for 'high', mirrored for 'low', and 1 − |y − target|/within to the shape for a target.
 */
function desirability(entry: RankEntry, quantityOf: QuantityFinder): Expression {
  const { shape = 1 } = entry;
  const value = quantityOf(entry.quantity).formula;
  const held = greater(0, lesser(1, share(entry, value)));
  // An infinite value is no value, and must not become the best or the worst desirability.
  const finite = atMost(absolute(value), Number.MAX_VALUE);
  return within(finite, shape === 1 ? held : power(held, shape));
}

function share({ prefer, from = 0, to = 1, within: reach = 1 }: RankEntry, value: Expression): Expression {
  if (typeof prefer !== 'string') return minus(1, divide(absolute(minus(value, prefer.target)), reach));
  return prefer === 'high' ? divide(minus(value, from), to - from) : divide(minus(to, value), to - from);
}
